/**
 * Columns of the answers about a joint in the morning, from the questions. A score carries its scale in the
 * column's name; an answer may be null, what says how it was asked never is.
 */
import { type SQL, sql } from 'drizzle-orm';
import { type AnswerField, answerFields, morningQuestions } from '#core/record/morning-questions.ts';
import { kit, wholeWithin, words } from './kit.ts';

type Words = readonly [string, ...string[]];
type ColumnOf<F extends AnswerField> = F extends { readonly kind: 'integer' }
  ? ReturnType<typeof kit.wholeOrNull>
  : F extends { readonly kind: 'flag' }
    ? ReturnType<typeof kit.yesOrNull>
    : F extends { readonly values: infer V extends Words; readonly nullable: true }
      ? ReturnType<typeof kit.wordOrNull<V>>
      : F extends { readonly values: infer V extends Words }
        ? ReturnType<typeof kit.word<V>>
        : never;

type Columns = { readonly [F in AnswerField as F['name']]: ColumnOf<F> };

const inLowerCase = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const columnOf = (field: AnswerField) => {
  const name = inLowerCase(field.name);
  switch (field.kind) {
    case 'integer':
      return kit.wholeOrNull(field.unit === '{score}' ? `${name}_0_10` : name);
    case 'flag':
      return kit.yesOrNull(name);
    case 'enum':
      return 'nullable' in field ? kit.wordOrNull(name, field.values) : kit.word(name, field.values);
  }
};

/** Made anew for each table. */
export const answerColumns = (): Columns =>
  Object.fromEntries(answerFields.map((field) => [field.name, columnOf(field)])) as Columns;

const conditionOf = (field: AnswerField, column: unknown): SQL | null => {
  if (field.kind === 'integer') return wholeWithin(column, field.min, field.max);
  if (field.kind === 'flag') return null;
  const isListed = sql`${column} IN (${words(field.values)})`;
  return 'nullable' in field ? sql`${column} IS NULL OR ${isListed}` : isListed;
};

/** What a stored answer and its wording must be, by a name that ends in the question's id or the field. */
export const answerChecks = (
  table: string,
  columns: Readonly<Record<AnswerField['name'], unknown>>,
): readonly ReturnType<typeof kit.check>[] =>
  morningQuestions
    .flatMap(({ id, answer, wording }) => [
      { name: id as string, field: answer as AnswerField },
      ...(wording ? [{ name: inLowerCase(wording.name), field: wording as AnswerField }] : []),
    ])
    .flatMap(({ name, field }) => {
      const condition = conditionOf(field, columns[field.name]);
      return condition ? [kit.check(`${table}_${name}`, condition)] : [];
    });

/** The record as CSV: a file for each table that has rows, and a dictionary of every column beside them. */
import { leftOut, type RecordColumn, type RecordRows, recordColumns } from '#data/patients/record-tables.ts';
import type { sentences } from '#messages/en/language.ts';
import { textOf } from '#messages/every-language.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { type Cell, csvLines } from './cells.ts';
import { notOfTheRecord, tables } from './tables.ts';

type Row = Readonly<Record<string, unknown>>;

const cellOf = ({ kind }: RecordColumn, value: unknown): Cell => {
  if (value === null || value === undefined) return null;
  if (kind === 'instant') return new Date(Number(value)).toISOString();
  if (kind === 'yes-no') return value ? 'yes' : 'no';
  if (kind === 'structure') return JSON.stringify(value);
  return typeof value === 'number' ? value : String(value);
};

/** Of a column with such a mark beside it the record keeps the more cautious answer where nobody gave one. */
const markOf = (name: string): string => `${name}Unanswered`;

/** Something new is told by what was ticked; where nobody was asked, it is no answer either. */
const isNewsOpen = ({ news, otherJointWorse }: Row): boolean => news === null && otherJointWorse === null;

/** The value as it was answered, so that a file for others is empty where nobody answered. */
const answered = (row: Row, name: string): unknown =>
  row[markOf(name)] || (name === 'reportedNew' && isNewsOpen(row)) ? null : row[name];

/** Whether it may be empty in the file, though the record keeps an answer there. */
const mayStayOpen = ({ name, mayBeEmpty }: RecordColumn, columns: readonly RecordColumn[]): boolean =>
  mayBeEmpty || name === 'reportedNew' || columns.some((one) => one.name === markOf(name));

export const headOf = (table: string): string =>
  csvLines([['patientId', ...(recordColumns[table] ?? []).map(({ name }) => name)]]);

export interface TableLines {
  readonly table: string;
  readonly rows: number;
  readonly lines: string;
}

/** Lines without a head, of the tables that have rows of this person. */
export const personTables = (patientId: string, rows: RecordRows): readonly TableLines[] =>
  Object.keys(tables).flatMap((table) => {
    const own = (rows as Readonly<Record<string, readonly Row[]>>)[table] ?? [];
    const columns = recordColumns[table] ?? [];
    if (own.length === 0) return [];
    const lines = csvLines(
      own.map((row) => [patientId, ...columns.map((column) => cellOf(column, answered(row, column.name)))]),
    );
    return [{ table, rows: own.length, lines }];
  });

const kindInWords: Readonly<Record<RecordColumn['kind'], string>> = {
  text: 'text',
  number: 'number',
  'yes-no': 'yes or no',
  instant: 'instant of UTC, ISO 8601',
  structure: 'several values as JSON',
};

const units: readonly (readonly [RegExp, string])[] = [
  [/_0_10$|^usual_pain|^acceptable_pain|^usual_fatigue$/, '0 to 10'],
  [/_kg$/, 'kg'],
  [/_minutes$/, 'min'],
  [/_degrees$/, 'degrees'],
  [/_g$/, 'g per day'],
  [/_kcal$/, 'kcal per day'],
  [/^every_days$|^days$/, 'days'],
];

const unitOf = ({ stored, kind }: RecordColumn): string =>
  kind === 'number' ? (units.find(([name]) => name.test(stored))?.[1] ?? '') : '';

/** Every column of every table, whether this record has rows of it or not. */
export const dictionary = (): string =>
  csvLines([
    ['table', 'a row is', 'column', 'kind', 'unit or scale', 'may be empty', 'one of'],
    ...Object.entries(tables).flatMap(([table, about]) => [
      [table, about, 'patientId', 'text', '', 'no', ''],
      ...(recordColumns[table] ?? []).map((column, _place, columns): Cell[] => [
        ...[table, about, column.name, kindInWords[column.kind], unitOf(column)],
        ...[mayStayOpen(column, columns) ? 'yes' : 'no', column.words.join(' | ')],
      ]),
    ]),
  ]);

const notInIt: Readonly<Record<string, string>> = { ...leftOut, ...notOfTheRecord };

type Key = keyof (typeof sentences)['read-me'];

/** What the files are, in the language of whoever has them; the columns are named in English. */
export const readMe = (language: LanguageTag): string => {
  const say = (key: Key): string => textOf('read-me', key)[language];
  return [
    ...[say('files'), say('written'), say('errors'), say('formulas'), '', say('not-in-it')],
    ...Object.keys(notInIt).map((table) => `- ${table}: ${say(table as Key)}`),
    '',
  ].join('\n');
};

/**
 * What was typed into a form of descriptor fields, and how it is read. Everything stays as it was
 * typed until it is sent; an empty field is "not given", never zero.
 */
import type { Field, ListField, NumberField, RecordField } from '#core/calculations/describe.ts';
import { isDateTime } from '#core/time/date-time.ts';
import { isDay } from '#core/time/day.ts';
import { say } from '#messages/en/staff/clinic.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { askedFor, noSuchDay, noSuchTime, numberAskedFor, tooLong, typeWithin } from './field-problems.ts';
import { labelOf } from './field-words.ts';
import { readWithUnit } from './typed-units.ts';

/** Path of a field, such as "home.observedSessions", to the text in it. Several ticked boxes stand one a line. */
export type Typed = Readonly<Record<string, string>>;

/** Stands for "asked and not answered" where a list may be null. */
export const notAnswered = 'not-answered';
/** Stands for a list that is empty on purpose; nothing ticked says nothing. */
export const noneOfThese = 'none';

type Found = { readonly value?: unknown; readonly problems: readonly Problem[] };

const nothing: Found = { problems: [] };
const found = (value: unknown): Found => ({ value, problems: [] });
const wrong = (field: string, text: string): Found => ({ problems: [{ field, text }] });

/** Nothing typed: left out where it may be, null where that is an answer, else asked for in the words of the field. */
const empty = (field: Field, path: string): Found => {
  if (field.optional) return nothing;
  if (field.nullable) return found(null);
  const mayBeEmpty = field.kind === 'text' && field.minLength === 0;
  return mayBeEmpty ? found('') : wrong(path, askedFor(field));
};

/** A field that is not asked is not missing. */
const notAskedFor = (field: Field): Found => (field.nullable ? found(null) : nothing);

/** Said on the page already, so that all that is wrong with a form is said at once. */
const isWithin = (field: Field, value: number): boolean => {
  if (field.kind !== 'number' && field.kind !== 'integer') return true;
  const { min = -Infinity, max = Infinity, exclusiveMin } = field;
  return value <= max && (exclusiveMin ? value > min : value >= min);
};

/** A number typed into a field of its own form; its problem names the label, the bound and what to type. */
export const numberAt = (field: Field, path: string, text: string): Found => {
  if (field.also?.includes(text)) return found(text);
  const bare = readNumber(text);
  const unit = field.kind === 'number' ? field.unit : '';
  const value = Number.isNaN(bare) ? readWithUnit(text, unit) : bare;
  if (value === null || Number.isNaN(value)) return wrong(path, numberAskedFor(field));
  const isWhole = field.kind !== 'integer' || Number.isInteger(value);
  if (!isWhole) return { value, problems: [{ field: path, text: numberAskedFor(field) }] };
  if (isWithin(field, value)) return found(value);
  return { value, problems: [{ field: path, text: typeWithin(field as NumberField) }] };
};

const rowAt = (row: RecordField, line: string): Record<string, unknown> | null => {
  const texts = line.trim().split(/[\s;]+/);
  if (texts.length !== row.fields.length) return null;
  const values = texts.map((text) => (text === '-' ? null : readNumber(text)));
  if (values.some((value) => Number.isNaN(value))) return null;
  return Object.fromEntries(row.fields.map((field, place) => [field.name, values[place]]));
};

/** The lines of a text, empty ones left out. */
export const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

const rowsAt = (row: RecordField, path: string, text: string): Found => {
  const rows = linesOf(text).map((line) => rowAt(row, line));
  return rows.includes(null)
    ? wrong(path, say('enter-on-each-line', { fields: row.fields.map(labelOf).join(', then ') }))
    : found(rows);
};

const listAt = (field: ListField, path: string, text: string): Found => {
  if (text === notAnswered) return found(null);
  if (text === noneOfThese) return found([]);
  if (field.of.kind === 'record') return rowsAt(field.of, path, text);
  if (field.of.kind !== 'number' && field.of.kind !== 'integer') return found(linesOf(text));
  const texts = text.split(/[\s;]+/).filter((part) => part !== '');
  const values = texts.map(readNumber);
  return values.some((value) => Number.isNaN(value))
    ? wrong(path, say('type-numbers', { field: labelOf(field) }))
    : found(values);
};

const recordAt = (field: RecordField, path: string, typed: Typed): Found => {
  const inner = readTyped(field.fields, typed, `${path}.`);
  const isEmpty = Object.keys(typed).every((key) => !key.startsWith(`${path}.`) || typed[key]?.trim() === '');
  if (isEmpty && (field.optional || field.nullable)) return empty(field, path);
  return inner;
};

/** Whether a field is asked, as the fields beside it stand. What was typed before it was not stays typed. */
export const isAsked = (field: Field, typed: Typed, path: string): boolean => {
  // One value only: there is nothing to ask.
  if (field.kind === 'enum' && field.values.length === 1) return false;
  const { onlyWhen } = field;
  return !onlyWhen || onlyWhen.is.includes(typed[`${path}${onlyWhen.field}`] ?? '');
};

const fieldAt = (field: Field, path: string, typed: Typed): Found => {
  if (field.kind === 'record') return recordAt(field, path, typed);
  // One value only: there is nothing to ask.
  if (field.kind === 'enum' && field.values.length === 1) return found(field.values[0]);
  const text = (typed[path] ?? '').trim();
  if (field.kind === 'list') {
    if (text === '' && !field.optional && !field.nullable && (field.minItems ?? 0) > 0)
      return wrong(path, askedFor(field));
    return text === '' && (field.optional || field.nullable) ? empty(field, path) : listAt(field, path, text);
  }
  if (text === '') return empty(field, path);
  switch (field.kind) {
    case 'number':
    case 'integer':
      return numberAt(field, path, text);
    case 'text':
      return text.length > field.maxLength
        ? wrong(path, tooLong(labelOf(field), text.length, field.maxLength))
        : found(text);
    case 'day':
      return isDay(text) ? found(text) : wrong(path, noSuchDay(field));
    case 'date-time':
      return isDateTime(text, field.mayLackTime ?? false) ? found(text) : wrong(path, noSuchTime(field));
    case 'flag':
      return found(text === 'yes');
    default:
      return found(text);
  }
};

export interface Read {
  readonly value: Record<string, unknown>;
  readonly problems: readonly Problem[];
}

/** The value of a form. What cannot be read is a problem; bounds are the server's to refuse. */
export const readTyped = (fields: readonly Field[], typed: Typed, prefix = ''): Read => {
  const value: Record<string, unknown> = {};
  const problems: Problem[] = [];
  for (const field of fields) {
    const isLeftOut = field.onlyWhen && !isAsked(field, typed, prefix);
    const one = isLeftOut ? notAskedFor(field) : fieldAt(field, `${prefix}${field.name}`, typed);
    problems.push(...one.problems);
    if ('value' in one) value[field.name] = one.value;
  }
  return { value, problems };
};

const textOf = (value: unknown): string => {
  if (value === null || value === undefined) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) {
    if (value.length === 0) return noneOfThese;
    const isRows = value.some((item) => typeof item === 'object' && item !== null);
    return isRows
      ? value
          .map((row) =>
            Object.values(row as object)
              .map((cell) => cell ?? '-')
              .join(' '),
          )
          .join('\n')
      : value.join(value.every((item) => typeof item === 'number') ? ' ' : '\n');
  }
  return String(value);
};

/** The texts that stand for a value, such as an example or what is on record. */
export const typedFrom = (value: Readonly<Record<string, unknown>>, prefix = ''): Typed =>
  Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) =>
      typeof inner === 'object' && inner !== null && !Array.isArray(inner)
        ? Object.entries(typedFrom(inner as Record<string, unknown>, `${prefix}${name}.`))
        : [[`${prefix}${name}`, textOf(inner)] as const],
    ),
  );

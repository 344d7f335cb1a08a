/**
 * Turns what zod found into the refusals of the core, each with a sentence that says how to put
 * it right. The descriptor gives the words, so a screen and the desk say the same thing.
 */
import type { z } from 'zod';
import type { Field } from '#core/calculations/describe.ts';
import type { Refusal, RefusalCode } from '#core/outcome.ts';
import { withUnit } from './unit-words.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** "input.facts.painBefore", "input.repetitions[2]". */
const pathText = (root: string, path: Path): string =>
  path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : `${text}.${String(part)}`),
    root,
  );

/** The descriptor at a path; undefined at the root, which is the record of all fields. */
const fieldAt = (fields: readonly Field[], path: Path): Field | undefined => {
  let level: readonly Field[] = fields;
  let found: Field | undefined;
  for (const part of path) {
    found =
      typeof part === 'number' && found?.kind === 'list'
        ? found.of
        : level.find((field) => field.name === part);
    level = found?.kind === 'record' ? found.fields : [];
  }
  return found;
};

/** The value at a path, own properties only, so that "constructor" is not found on every object. */
const valueAt = (input: unknown, path: Path): unknown => {
  let value = input;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
};

const listed = (values: readonly unknown[]): string => values.map(String).join(', ');

const kindWords: Readonly<Record<Field['kind'], string>> = {
  number: 'a number',
  integer: 'a whole number',
  enum: 'one of the listed words',
  text: 'text',
  day: 'a day that exists, such as 2026-03-31',
  'date-time': 'a day that exists with a time of day, such as 2026-03-31T10:30',
  flag: 'true or false',
  list: 'a list',
  record: 'an object',
};

/** What may be given, in words: "a whole number, not-applicable or null". */
const accepted = (field: Field | undefined): string => {
  if (!field) return 'an object';
  const first = field.kind === 'enum' ? `one of ${listed(field.values)}` : kindWords[field.kind];
  const all = [first, ...(field.also ?? []), ...(field.nullable ? ['null'] : [])];
  return all.length === 1 ? first : `${all.slice(0, -1).join(', ')} or ${all.at(-1)}`;
};

const received = (value: unknown): string => {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'string') return 'text';
  if (typeof value === 'number' && !Number.isFinite(value)) return 'a number too large to hold';
  if (typeof value === 'number' && !Number.isInteger(value)) return 'a number with a fraction';
  return typeof value === 'object' ? 'an object' : `a ${typeof value}`;
};

/** Of the branches of "number or word", the one the value was meant for. */
const meantBranch = (issue: Extract<Issue, { code: 'invalid_union' }>, value: unknown): Issue | undefined => {
  const plain = issue.errors[0]?.[0];
  const literal = issue.errors[1]?.[0];
  const isPlainWord = plain?.code === 'invalid_value';
  return typeof value === 'string' && !isPlainWord ? literal : plain;
};

/** What a bound counts, for fields whose bound is no measured figure. */
const countedIn = { text: 'character', list: 'item' } as const;

const boundWords = (bound: number, field: Field | undefined): string => {
  if (field?.kind === 'text' || field?.kind === 'list') {
    return `${bound} ${countedIn[field.kind]}${bound === 1 ? '' : 's'}`;
  }
  return withUnit(bound, field?.kind === 'number' || field?.kind === 'integer' ? field.unit : '1');
};

const sizeReason = (issue: Issue, field: Field | undefined, name: string): string => {
  const verb = field?.kind === 'text' || field?.kind === 'list' ? 'has' : 'is';
  if (issue.code === 'too_big') return `${name} ${verb} at most ${boundWords(Number(issue.maximum), field)}.`;
  if (issue.code !== 'too_small') return issue.message;
  const bound = boundWords(Number(issue.minimum), field);
  return issue.inclusive ? `${name} ${verb} at least ${bound}.` : `${name} ${verb} above ${bound}.`;
};

interface Place {
  readonly field: Field | undefined;
  readonly name: string;
  readonly value: unknown;
}

const codeOf = (issue: Issue, value: unknown, field: Field | undefined): RefusalCode => {
  if (value === undefined) return 'missing';
  if (field?.kind === 'day' || field?.kind === 'date-time') return 'wrong-type';
  if (issue.code === 'too_small') return 'too-low';
  if (issue.code === 'too_big') return 'too-high';
  if (issue.code === 'invalid_value') return typeof value === 'string' ? 'not-listed' : 'wrong-type';
  return issue.code === 'invalid_type' ? 'wrong-type' : 'inconsistent';
};

const reasonOf = (code: RefusalCode, issue: Issue, { field, name, value }: Place): string => {
  if (code === 'missing') return `Give ${name}: ${accepted(field)}.`;
  if (code === 'too-low' || code === 'too-high') return sizeReason(issue, field, name);
  if (code === 'not-listed') return `${name} is ${accepted(field)}.`;
  if (code === 'wrong-type' && (field?.kind === 'day' || field?.kind === 'date-time'))
    return `${name} is ${accepted(field)}.`;
  if (code === 'wrong-type') return `${name} is ${accepted(field)}; this is ${received(value)}.`;
  return issue.message;
};

const refusalsOfIssue = (
  found: Issue,
  fields: readonly Field[],
  input: unknown,
  root: string,
): readonly Refusal[] => {
  const value = valueAt(input, found.path);
  const field = fieldAt(fields, found.path);
  const name = pathText(root, found.path).replace(/^.*\./, '');
  if (found.code === 'unrecognized_keys') {
    return found.keys.map((key) => ({
      field: pathText(root, [...found.path, key]),
      code: 'unknown-field',
      reason: `Leave out ${key}: it is not a field of ${name}.`,
    }));
  }
  const issue = (found.code === 'invalid_union' ? meantBranch(found, value) : found) ?? found;
  // A union reports the inside of a list or record with a path of its own.
  if (issue !== found && issue.path.length > 0) {
    const inner = { ...issue, path: [...found.path, ...issue.path] } as Issue;
    return refusalsOfIssue(inner, fields, input, root);
  }
  const code = codeOf(issue, value, field);
  const reason = reasonOf(code, issue, { field, name, value });
  return [{ field: pathText(root, found.path), code, reason }];
};

/** Every refusal of one input, in the order of the descriptor; `root` is "input" at the desk. */
export const refusalsFromIssues = (
  issues: readonly Issue[],
  fields: readonly Field[],
  input: unknown,
  root = 'input',
): readonly Refusal[] => issues.flatMap((issue) => refusalsOfIssue(issue, fields, input, root));

/** Values without parts: their kind in JSON, the published pattern, and days that exist. */
import { isDay } from '#core/time/day.ts';
import { table } from '../definitions/table.ts';

const numeric = new Set(['integer', 'decimal', 'positiveInt', 'unsignedInt']);
const dated = new Set(['date', 'dateTime', 'instant']);

const patterns = new Map(
  Object.entries(table.primitives).map(([type, pattern]) => [
    type,
    pattern === '' ? null : new RegExp(`^(?:${pattern})$`),
  ]),
);

export const isPrimitive = (type: string): boolean => patterns.has(type);

const kindOf = (type: string): 'boolean' | 'number' | 'string' =>
  type === 'boolean' ? 'boolean' : numeric.has(type) ? 'number' : 'string';

/** A day of the year is looked up in the calendar; a year or a month alone always exists. */
const hasRealDay = (value: string): boolean => value.length < 10 || isDay(value.slice(0, 10));

/** What is wrong with the value, or null. */
export const faultOfPrimitive = (type: string, value: unknown): string | null => {
  const kind = kindOf(type);
  if (typeof value !== kind) return `must be a ${kind}`;
  const pattern = patterns.get(type);
  if (pattern && !pattern.test(String(value))) return `is no ${type}`;
  if (kind === 'string' && String(value).trim() === '') return 'is empty';
  return dated.has(type) && !hasRealDay(String(value)) ? 'is a day that does not exist' : null;
};

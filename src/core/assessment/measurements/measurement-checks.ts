/** What cannot be of a measurement, and what is asked about before it is kept. */
import type { Refusal } from '#core/outcome.ts';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';
import { measureOf } from '../measures/registry.ts';
import { farFromLast, isSameSubject } from './far-from-last.ts';
import { unlikelyLoad } from './likely-load.ts';
import type { Measurement } from './measurement.ts';

/** Refusals that need more than one field, or the day. */
export const measurementConsistent = (row: Measurement, today: Day): readonly Refusal[] => {
  const refusals: Refusal[] = [];
  const refused = (field: string, reason: string) =>
    refusals.push({ field: `input.${field}`, code: 'inconsistent', reason });
  if (!isDay(row.day)) refused('day', 'Give a day that exists.');
  else if (daysBetween(row.day, today) < 0)
    refused('day', `The day is after today (${today}); give the day it was measured.`);
  return [...refusals, ...(measureOf(row.kind).consistent?.(row) ?? [])];
};

const shown = (unit: string) =>
  unit === '1' || unit.startsWith('{') ? '' : ` ${unit.replace('mm[Hg]', 'mmHg')}`;

/**
 * What to ask before an unlikely value is kept: out of the usual range, far from the person's last one of
 * the same thing or from what the body weight makes likely, or two readings that disagree. `known` are the
 * measurements of the person, oldest first. Empty when nothing stands out.
 */
export const unlikely = (row: Measurement, known: readonly Measurement[]): readonly string[] => {
  const { usual = [], asks } = measureOf(row.kind);
  const values = row as unknown as Record<string, unknown>;
  const questions = usual.flatMap(({ name, low, high, unit }) => {
    const value = values[name];
    return typeof value === 'number' && (value < low || value > high)
      ? [`${value}${shown(unit)} is outside the usual ${low} to ${high}${shown(unit)}. Is it right?`]
      : [];
  });
  const last = known.findLast((one) => isSameSubject(row, one)) ?? null;
  return [
    ...questions,
    ...(asks?.(row) ?? []),
    ...farFromLast(row, last),
    ...(row.kind === 'repetitions-to-failure' ? unlikelyLoad(row, known) : []),
  ];
};

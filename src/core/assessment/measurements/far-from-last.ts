/**
 * How far a new measurement lies from the last one of the very same thing, and from where on that is asked
 * about before it is kept. The shares are choices of this project: a typing slip, not a judgement.
 */
import type { Measurement } from './measurement.ts';

/** Percent of the last value from which a confirmation is asked; kinds not named are never asked. */
const askedFromPercent: Partial<Record<Measurement['kind'], number>> = {
  'body-mass': 10,
  stature: 3,
  'limb-circumference': 15,
  'limb-occlusion-pressure': 30,
  'timed-up-and-go': 60,
  grip: 50,
  'isometric-force': 60,
};

type Figures = readonly { readonly value: number; readonly unit: string }[];

const figuresOf = (row: Measurement): Figures => {
  switch (row.kind) {
    case 'body-mass':
      return [{ value: row.massKg, unit: 'kg' }];
    case 'stature':
      return [{ value: row.statureCm, unit: 'cm' }];
    case 'limb-circumference':
      return [{ value: row.circumferenceCm, unit: 'cm' }];
    case 'limb-occlusion-pressure':
      return [{ value: Math.min(row.firstMmhg, row.secondMmhg), unit: 'mmHg' }];
    case 'timed-up-and-go':
      return [{ value: row.seconds, unit: 's' }];
    case 'grip':
      return [{ value: row.forceKg, unit: 'kg' }];
    case 'isometric-force':
      return [{ value: row.forceN, unit: 'N' }];
    default:
      return [];
  }
};

const sameFields = ['limb', 'side', 'site', 'exerciseId', 'activity', 'cuffWidthCm', 'position'] as const;

/** Whether two measurements are of the same kind, limb, side, place and way of measuring. */
export const isSameSubject = (one: Measurement, other: Measurement): boolean => {
  const [a, b] = [one, other] as unknown as readonly [Record<string, unknown>, Record<string, unknown>];
  return one.kind === other.kind && sameFields.every((field) => a[field] === b[field]);
};

/** A question for a value far from the last one of the same thing; empty when it is near, or there is none. */
export const farFromLast = (row: Measurement, previous: Measurement | null): readonly string[] => {
  const percent = askedFromPercent[row.kind];
  if (!previous || percent === undefined || !isSameSubject(row, previous)) return [];
  const [now] = figuresOf(row);
  const [last] = figuresOf(previous);
  if (!now || !last || last.value === 0) return [];
  const change = (Math.abs(now.value - last.value) / last.value) * 100;
  return change > percent
    ? [`That is ${change.toFixed(0)} % away from ${last.value} ${last.unit} on ${previous.day}. Is it right?`]
    : [];
};

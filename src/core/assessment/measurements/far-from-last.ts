/**
 * How far a new measurement lies from the last one of the very same thing, and from where on that is asked
 * about before it is kept. The shares are choices of this project: a typing slip, not a judgement.
 */
import type { Measurement } from './measurement.ts';

/** Percent of the last value from which a confirmation is asked; kinds not named are never asked. */
const askedFromPercent: Partial<Record<Measurement['kind'], number>> = {
  'body-mass': 10,
  stature: 3,
  'blood-pressure': 30,
  'limb-circumference': 15,
  'limb-occlusion-pressure': 30,
  'ankle-brachial-index': 40,
  'chair-stand-30s': 60,
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
    case 'blood-pressure':
      return [
        { value: row.systolicMmhg, unit: 'mmHg' },
        { value: row.diastolicMmhg, unit: 'mmHg' },
      ];
    case 'limb-circumference':
      return [{ value: row.circumferenceCm, unit: 'cm' }];
    case 'limb-occlusion-pressure':
      return [{ value: Math.min(row.firstMmhg, row.secondMmhg), unit: 'mmHg' }];
    case 'ankle-brachial-index':
      return [
        { value: row.dorsalisPedisMmhg, unit: 'mmHg' },
        { value: row.posteriorTibialMmhg, unit: 'mmHg' },
      ];
    case 'chair-stand-30s':
      return [{ value: row.stands, unit: 'stands' }];
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

/** A question for each value far from the last one of the same thing; empty when all are near, or there is none. */
export const farFromLast = (row: Measurement, previous: Measurement | null): readonly string[] => {
  const percent = askedFromPercent[row.kind];
  if (!previous || percent === undefined || !isSameSubject(row, previous)) return [];
  const lastFigures = figuresOf(previous);
  return figuresOf(row).flatMap((now, place) => {
    const last = lastFigures[place];
    if (!last || last.value === 0) return [];
    const change = (Math.abs(now.value - last.value) / last.value) * 100;
    if (change <= percent) return [];
    return [
      `${now.value} ${now.unit} is ${change.toFixed(0)} % away from ${last.value} ${last.unit} on ${previous.day}. Is it right?`,
    ];
  });
};

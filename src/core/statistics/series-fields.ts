/** Input lists that several series rules share. Bounds keep sums finite; lengths keep pairwise work short. */
import type { ListField, NumberField } from '../calculations/describe.ts';

const value = {
  name: 'value',
  kind: 'number',
  unit: '1',
  min: -1e6,
  max: 1e6,
} as const satisfies NumberField;

/** Values in order of time, all recorded. */
export const charted = <const N extends string>(name: N) =>
  ({ name, kind: 'list', of: value, minItems: 1, maxItems: 5000 }) as const satisfies ListField;

/** Values whose pairs are all compared. */
export const paired = <const N extends string>(name: N, minItems: number) =>
  ({ name, kind: 'list', of: value, minItems, maxItems: 1000 }) as const satisfies ListField;

/** One value a day in order of day; null is a day without a record, which is never zero. */
export const daily = <const N extends string>(name: N, about: string) =>
  ({
    name,
    kind: 'list',
    of: { ...value, nullable: true },
    minItems: 1,
    maxItems: 2000,
    about,
  }) as const satisfies ListField;

export const sigma = {
  name: 'sigma',
  kind: 'number',
  unit: '1',
  min: 1e-6,
  max: 1e6,
  about: 'Standard deviation of a single value in its frozen baseline, in the unit of the data.',
} as const satisfies NumberField;

export const target = {
  name: 'target',
  kind: 'number',
  unit: '1',
  min: -1e6,
  max: 1e6,
} as const satisfies NumberField;

/** Input fields that several strength rows share, with one set of bounds. */
import type { EnumField, NumberField } from '#core/calculations/describe.ts';
import { equationIds } from './equations/all.ts';

/** Heavier than any lift of a patient; above it a number is a slip of the keyboard. */
const heaviestKg = 1000;
/** One gram: below it a load is nothing, and ratios of loads lose their meaning. */
const lightestKg = 0.001;

export const loadField = <N extends string>(name: N, about: string) =>
  ({
    name,
    kind: 'number',
    unit: 'kg',
    min: lightestKg,
    max: heaviestKg,
    about,
  }) as const satisfies NumberField;

export const ownedLoadField = {
  name: 'load',
  kind: 'number',
  unit: 'kg',
  min: 0,
  max: heaviestKg,
} as const satisfies NumberField;

export const availableField = {
  name: 'availableKg',
  kind: 'list',
  of: ownedLoadField,
  maxItems: 2000,
  about: 'Loads the patient owns or can put together.',
} as const;

export const repetitionsField = {
  name: 'repetitions',
  kind: 'integer',
  unit: '1',
  min: 1,
  max: 1000,
  about: 'Whole repetitions done until no further one was possible.',
} as const satisfies NumberField;

export const reserveField = {
  name: 'reserve',
  kind: 'number',
  unit: '1',
  min: 0,
  max: 10,
  about: 'Repetitions the person could still have done.',
} as const satisfies NumberField;

export const equationField = {
  name: 'equation',
  kind: 'enum',
  values: equationIds,
  about: 'Published repetition equation.',
} as const satisfies EnumField;

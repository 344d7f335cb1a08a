/** Input fields that several nutrition rules share. The bounds refuse typing errors; adults only. */
import type { EnumField, NumberField } from '../calculations/describe.ts';

export const massKg = {
  name: 'massKg',
  kind: 'number',
  unit: 'kg',
  min: 20,
  max: 350,
} as const satisfies NumberField;

export const statureCm = {
  name: 'statureCm',
  kind: 'number',
  unit: 'cm',
  min: 100,
  max: 250,
} as const satisfies NumberField;

export const ageYears = {
  name: 'ageYears',
  kind: 'number',
  unit: 'a',
  min: 18,
  max: 120,
  about: 'Completed years. These rules are for adults.',
} as const satisfies NumberField;

export const sex = {
  name: 'sex',
  kind: 'enum',
  values: ['female', 'male'],
  about: 'Which coefficients of the published formula to use.',
} as const satisfies EnumField;

export const leanMassKg = {
  name: 'leanMassKg',
  kind: 'number',
  unit: 'kg',
  min: 10,
  max: 200,
  about: 'Measured, or computed by a named formula.',
} as const satisfies NumberField;

export const bodyMassIndexField = {
  name: 'bodyMassIndex',
  kind: 'number',
  unit: 'kg/m2',
  min: 8,
  max: 100,
} as const satisfies NumberField;

export type Sex = (typeof sex.values)[number];

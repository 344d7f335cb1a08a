import type { EnumField, NumberField } from '#core/calculations/describe.ts';

/** Input fields the statics rows share. Bounds are those of adults the segment tables can stand for. */
export const sexField = {
  name: 'sex',
  kind: 'enum',
  values: ['female', 'male'],
  about: 'Which segment table is used.',
} as const satisfies EnumField;

export const massField = {
  name: 'massKg',
  kind: 'number',
  unit: 'kg',
  min: 25,
  max: 300,
  about: 'Body mass.',
} as const satisfies NumberField;

export const statureField = {
  name: 'statureM',
  kind: 'number',
  unit: 'm',
  min: 1,
  max: 2.3,
  about: 'Standing height.',
} as const satisfies NumberField;

export const addedField = {
  name: 'addedKg',
  kind: 'number',
  unit: 'kg',
  min: 0,
  max: 100,
  about: 'Weight added; 0 for none.',
} as const satisfies NumberField;

export const distanceField = {
  name: 'distanceM',
  kind: 'number',
  unit: 'm',
  min: 0,
  max: 1.5,
  optional: true,
  about: 'Joint to weight; left out, the usual place on a body of this stature.',
} as const satisfies NumberField;

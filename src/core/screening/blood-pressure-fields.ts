/** The blood-pressure pair as input: bounds are what an arm cuff can read, not what is healthy. */
import type { NumberField } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';

export const systolicField = {
  name: 'systolicMmhg',
  kind: 'number',
  unit: 'mm[Hg]',
  min: 50,
  max: 300,
  about: 'Resting systolic pressure, upper arm.',
} as const satisfies NumberField;

export const diastolicField = {
  name: 'diastolicMmhg',
  kind: 'number',
  unit: 'mm[Hg]',
  min: 20,
  max: 200,
  about: 'Resting diastolic pressure, upper arm; below the systolic one.',
} as const satisfies NumberField;

export const diastolicBelowSystolic = (input: {
  readonly systolicMmhg: number;
  readonly diastolicMmhg?: number;
}): readonly Refusal[] =>
  input.diastolicMmhg !== undefined && input.diastolicMmhg >= input.systolicMmhg
    ? [
        {
          field: 'input.diastolicMmhg',
          code: 'inconsistent',
          reason: 'The diastolic pressure must be below the systolic one; check which is which.',
        },
      ]
    : [];

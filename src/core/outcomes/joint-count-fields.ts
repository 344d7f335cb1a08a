/** Inputs of the joint indices of rheumatoid arthritis. They are counted and entered by a clinician. */
import type { NumberField } from '../describe.ts';

export const tender = {
  name: 'tender',
  kind: 'integer',
  unit: '{joint}',
  min: 0,
  max: 28,
  about: 'Tender joints of 28.',
} as const satisfies NumberField;

export const swollen = {
  name: 'swollen',
  kind: 'integer',
  unit: '{joint}',
  min: 0,
  max: 28,
  about: 'Swollen joints of 28.',
} as const satisfies NumberField;

export const zeroToTen = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'number', unit: '{score}', min: 0, max: 10, about }) as const satisfies NumberField;

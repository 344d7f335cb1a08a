/** Inputs of the joint indices of rheumatoid arthritis. They are counted and entered by a clinician. */
import type { Field, InputOf, NumberField } from '#core/calculations/describe.ts';

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

/** What the clinical index adds up; the simplified one adds a blood test to it. */
export const clinicalFields = [
  tender,
  swollen,
  zeroToTen('patientGlobal', 'Patient’s global rating.'),
  zeroToTen('clinicianGlobal', 'Clinician’s global rating.'),
] as const satisfies readonly Field[];

export const clinicalSum = (given: InputOf<typeof clinicalFields>): number =>
  given.tender + given.swollen + given.patientGlobal + given.clinicianGlobal;

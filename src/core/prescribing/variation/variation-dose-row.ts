/** The proposal of a variation as a row of the registry, with the clinic's choices at their defaults. */
import { calculation } from '#core/calculations/calculation.ts';
import type { NumberField } from '#core/calculations/describe.ts';
import { massField, sexField, statureField } from '#core/exercises/body/fields.ts';
import { segmentCitations } from '#core/exercises/body/segments.ts';
import { chairHeightCitations } from '#core/exercises/statics/chair-height.ts';
import { leanBackRowCitations } from '#core/exercises/statics/lean-back-row.ts';
import { pushUpMeasuredCitations } from '#core/exercises/statics/push-up-measured.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { handEvidenceCitations } from './hand-evidence.ts';
import { variationSettings } from './settings.ts';
import { proposeVariationDose, variationExerciseIds } from './variation-dose.ts';

const whole = <const N extends string>(name: N, unit: string, min: number, max: number) =>
  ({ name, kind: 'integer', unit, min, max, optional: true }) as const satisfies NumberField;

export const variationDoseRow = calculation({
  id: 'variation-dose',
  title: 'Dose of a variation with its bad-day session and next step',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    { name: 'exerciseId', kind: 'enum', values: variationExerciseIds },
    { name: 'side', kind: 'enum', values: ['left', 'right', 'both'] },
    {
      name: 'tested',
      kind: 'record',
      optional: true,
      about: 'A set already done on this rung.',
      fields: [
        { name: 'repetitions', kind: 'integer', unit: '1', min: 0, max: 100 },
        { name: 'reserve', kind: 'integer', unit: '1', min: 0, max: 10 },
      ],
    },
    whole('holdSeconds', 's', 2, 60),
    whole('mostHoldSeconds', 's', 2, 60),
    whole('mark', '1', 1, 9),
    whole('sets', '1', 1, 6),
    whole('repetitionsLow', '1', 1, 60),
    whole('repetitionsHigh', '1', 1, 60),
    whole('reserve', '1', 0, 3),
    whole('restSeconds', 's', 15, 300),
    { name: 'secondsPerRepetition', kind: 'number', unit: 's', min: 2, max: 8, optional: true },
    whole('sessionsPerWeek', '1', 1, 7),
  ],
  result: [
    { name: 'dose', unit: '' },
    { name: 'badDay', unit: '', about: 'The easier session signed with it.' },
    { name: 'rung', unit: '', about: 'Share, effective load, moments, measured share and model error.' },
    {
      name: 'next',
      unit: '',
      about: 'The next harder rung and its step in percent; null where none is known.',
    },
    { name: 'start', unit: '', about: 'challenging, too-easy, too-hard or not-tested.' },
    { name: 'working', unit: '' },
  ],
  citations: [
    ...segmentCitations,
    ...pushUpMeasuredCitations,
    ...chairHeightCitations,
    ...leanBackRowCitations,
    ...handEvidenceCitations,
  ],
  calculate: ({ sex, massKg, statureM, ...input }) =>
    proposeVariationDose(
      { ...input, person: { sex, massKg, statureCm: statureM * 100 } },
      defaultsOf(variationSettings),
    ),
  example: {
    sex: 'female',
    massKg: 65,
    statureM: 1.62,
    exerciseId: 'sit-to-stand-chair',
    side: 'both',
    tested: { repetitions: 10, reserve: 3 },
  },
});

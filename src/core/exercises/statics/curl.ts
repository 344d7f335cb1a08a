/**
 * Elbow moment of gravity in a curl, or in any lift of the forearm with a weight in the hand.
 * Largest with the forearm level. No measurement was found to compare.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { addedField, distanceField, massField, sexField, statureField } from '../body/fields.ts';
import { limbLiftCitations, limbLiftMoment } from './limb-lift.ts';

export const curlRow = calculation({
  id: 'curl-moment',
  title: 'Elbow moment in a curl or an elbow extension',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    {
      name: 'angleDeg',
      kind: 'number',
      unit: 'deg',
      min: -90,
      max: 90,
      about: 'Angle of the forearm from the horizontal.',
    },
    addedField,
    distanceField,
  ],
  result: [{ name: 'momentNm', unit: 'N.m' }],
  citations: limbLiftCitations,
  calculate: (input) =>
    answer({ momentNm: limbLiftMoment({ ...input, lever: 'forearm' }) }, [
      { code: 'no-measurement', text: 'No measurement found to compare the model with.' },
    ]),
  example: { sex: 'male', massKg: 80, statureM: 1.75, angleDeg: 0, addedKg: 4 },
});

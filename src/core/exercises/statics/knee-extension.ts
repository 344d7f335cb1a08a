/**
 * Knee moment of gravity in seated knee extension, thigh level, with or without an ankle weight.
 *
 * Zero with the shank hanging, largest with the knee straight: a weight loads the end of the range.
 * A band anchored behind does the opposite. It is not the force in the knee joint.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { addedField, distanceField, massField, sexField, statureField } from '../body/fields.ts';
import { limbLiftCitations, limbLiftMoment } from './limb-lift.ts';

export const kneeExtensionRow = calculation({
  id: 'knee-extension-moment',
  title: 'Knee moment in seated knee extension',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    {
      name: 'flexionDeg',
      kind: 'number',
      unit: 'deg',
      min: 0,
      max: 90,
      about: 'Knee flexion, 0 = straight.',
    },
    addedField,
    distanceField,
  ],
  result: units({ momentNm: 'N.m', momentPerBodyMass: 'N.m/kg' }),
  citations: limbLiftCitations,
  calculate: ({ flexionDeg, ...input }) => {
    const momentNm = limbLiftMoment({ ...input, lever: 'shank', angleDeg: flexionDeg });
    return answer({ momentNm, momentPerBodyMass: momentNm / input.massKg }, [
      { code: 'no-measurement', text: 'No measurement found to compare the model with.' },
    ]);
  },
  example: { sex: 'female', massKg: 65, statureM: 1.62, flexionDeg: 30, addedKg: 3 },
});

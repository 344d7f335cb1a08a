/**
 * One cubic per exercise, 5–16 repetitions to failure, fitted in 40 trained older adults (73 ± 8
 * years) with low bone mass. The order of the coefficients is inferred from the printed list and
 * checked by the value at one repetition (1.002–1.008). No error was found; a seventh exercise, the
 * leg press, was not in what could be read. Says nothing of untrained people or painful joints.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { type Cubic, cubicFactor } from './equations/cubic.ts';
import { loadField, repetitionsField } from './fields.ts';
import { estimateNotMeasured, noEstimateFromLongSets } from './low-load-tests.ts';

const cubicExercises = [
  'lat-pulldown',
  'triceps-dips',
  'trunk-extension',
  'trunk-flexion',
  'leg-extension',
  'leg-flexion',
] as const;
export type CubicExercise = (typeof cubicExercises)[number];

export const exerciseCubics = {
  'lat-pulldown': {
    constant: 0.987542505,
    linear: 0.0152700149,
    quadratic: 0.00278487038,
    third: -0.000115638888,
  },
  'triceps-dips': {
    constant: 0.973559954,
    linear: 0.0271642658,
    quadratic: 0.000930880743,
    third: -0.0000477453474,
  },
  'trunk-extension': {
    constant: 1.01565994,
    linear: -0.0130808261,
    quadratic: 0.00601883266,
    third: -0.0002286238,
  },
  'trunk-flexion': {
    constant: 0.994961852,
    linear: 0.00731240752,
    quadratic: 0.00293967456,
    third: -0.00010510901,
  },
  'leg-extension': {
    constant: 0.999714613,
    linear: 0.00184050532,
    quadratic: 0.00390281962,
    third: -0.000128405344,
  },
  'leg-flexion': {
    constant: 0.994637813,
    linear: 0.00715193846,
    quadratic: 0.00333621122,
    third: -0.000109143358,
  },
} as const satisfies Record<CubicExercise, Cubic>;

const fromRepetitions = 5;
const toRepetitions = 16;

export const oneRepMaxByExercise = (input: {
  readonly exercise: CubicExercise;
  readonly loadKg: number;
  readonly repetitions: number;
}): Outcome<{ readonly oneRepMaxKg: number }> => {
  if (input.repetitions < fromRepetitions || input.repetitions > toRepetitions) {
    const reason =
      input.repetitions > 20
        ? noEstimateFromLongSets.text
        : `These curves hold for ${fromRepetitions}–${toRepetitions} repetitions to failure; ${input.repetitions} is outside.`;
    return refuse('repetitions', 'outside-validity', reason);
  }
  return answer(
    { oneRepMaxKg: input.loadKg * cubicFactor(exerciseCubics[input.exercise], input.repetitions) },
    [
      {
        code: 'equation-error',
        text: 'Fitted in 40 trained adults of 73 ± 8 years with low bone mass; no error was found for it, and the order of its coefficients is inferred.',
      },
      estimateNotMeasured,
    ],
  );
};

export const exerciseCubicRow = calculation({
  id: 'one-rep-max-by-exercise',
  title: 'One-repetition maximum by a curve per exercise, older trained adults',
  area: 'strength',
  input: [
    { name: 'exercise', kind: 'enum', values: cubicExercises },
    loadField('loadKg', 'Load lifted.'),
    repetitionsField,
  ],
  result: [{ name: 'oneRepMaxKg', unit: 'kg' }],
  citations: [
    {
      source: 'older-trained-2024',
      locator: 'abstract and coefficient list',
      mark: 'seen',
      remark: 'Coefficient order inferred; error not in the part that could be read.',
    },
  ],
  calculate: oneRepMaxByExercise,
  example: { exercise: 'leg-extension', loadKg: 10, repetitions: 10 },
});

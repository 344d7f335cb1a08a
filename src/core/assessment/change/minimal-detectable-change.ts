/**
 * Minimal detectable change from the standard error of measurement, or from double measures of one's own.
 *
 * 1.96 (or 1.645) times the root of two times the error: a change smaller than this happens by measuring alone
 * in 19 (or 9) of 20 (or 10) unchanged people. Papers that leave out the root of two print too small a figure.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';

const citations: readonly Citation[] = [
  { source: 'measurement-theory', locator: '1.96 times root two times the standard error', mark: 'computed' },
];
const twoSidedNormal = { 90: 1.6448536269514722, 95: 1.96 } as const;

export const minimalDetectableChange = (standardErrorOfMeasurement: number) => {
  const differenceDeviation = Math.SQRT2 * standardErrorOfMeasurement;
  return {
    differenceDeviation,
    mdc90: twoSidedNormal[90] * differenceDeviation,
    mdc95: twoSidedNormal[95] * differenceDeviation,
  };
};

const resultFields = [
  {
    name: 'differenceDeviation',
    unit: '1',
    about: 'standard deviation of the difference of two measurements',
  },
  { name: 'mdc90', unit: '1' },
  { name: 'mdc95', unit: '1' },
] as const;

export const minimalDetectableChangeRow = calculation({
  id: 'minimal-detectable-change',
  title: 'Minimal detectable change',
  area: 'outcomes',
  input: [{ name: 'standardErrorOfMeasurement', kind: 'number', unit: '1', min: 0, max: 1e6 }],
  result: resultFields,
  citations,
  calculate: (input) => answer(minimalDetectableChange(input.standardErrorOfMeasurement)),
  example: { standardErrorOfMeasurement: 0.48 },
});

const readings = <const N extends string>(name: N) =>
  ({
    name,
    kind: 'list',
    minItems: 5,
    maxItems: 1000,
    of: { name: 'reading', kind: 'number', unit: '1', min: -1e6, max: 1e6 },
  }) as const;

/** Standard error from pairs of an unchanged quantity: the deviation of the differences over the root of two. */
const errorFromPairs = (first: readonly number[], second: readonly number[]): number => {
  const differences = first.map((value, place) => (second[place] as number) - value);
  const mean = differences.reduce((sum, value) => sum + value, 0) / differences.length;
  const squares = differences.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (differences.length - 1)) / Math.SQRT2;
};

export const detectableChangeFromPairsRow = calculation({
  id: 'detectable-change-from-pairs',
  title: 'Detectable change from your own double measures',
  area: 'outcomes',
  input: [readings('first'), readings('second')],
  result: [{ name: 'standardErrorOfMeasurement', unit: '1' }, ...resultFields],
  citations,
  calculate: (input) => {
    if (input.first.length !== input.second.length) {
      return refuse(
        'second',
        'inconsistent',
        'Give one second reading for each first reading, in the same order.',
      );
    }
    const error = errorFromPairs(input.first, input.second);
    return answer({ standardErrorOfMeasurement: error, ...minimalDetectableChange(error) }, [
      {
        code: 'few-pairs',
        text: `From ${input.first.length} pairs; under about 30 the figure itself is very uncertain.`,
      },
    ]);
  },
  example: { first: [38.1, 40.2, 36.8, 42, 39.5], second: [38.4, 40, 37.1, 41.6, 39.9] },
});

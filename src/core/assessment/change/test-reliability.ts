/**
 * How alike three tests come out when people who await a knee arthroplasty do them twice.
 *
 * A reliability ranks people and is no error: 0.93 gives no figure in seconds until the spread between people is
 * known. With the spread of a clinic's own patients the error follows.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { minimalDetectableChange } from './minimal-detectable-change.ts';

export const testReliability = {
  'chair-stand-30s': 0.9,
  'fast-walk-40m': 0.93,
  'stair-climb': 0.94,
} as const;
type Test = keyof typeof testReliability;

const tests = Object.keys(testReliability) as [Test, ...Test[]];

export const changeFromReliabilityRow = calculation({
  id: 'detectable-change-from-reliability',
  title: 'Detectable change from a test’s reliability and your own spread',
  area: 'outcomes',
  input: [
    { name: 'test', kind: 'enum', values: tests },
    {
      name: 'standardDeviation',
      kind: 'number',
      unit: '1',
      min: 0,
      max: 1000,
      about: 'Between your own patients of this kind, in stands or seconds.',
    },
  ],
  result: [
    { name: 'reliability', unit: '1' },
    { name: 'standardErrorOfMeasurement', unit: '1' },
    { name: 'mdc90', unit: '1' },
    { name: 'mdc95', unit: '1' },
  ],
  citations: [
    {
      source: 'tolk-2019',
      locator:
        'abstract: 0.90 chair stand, 0.93 walk of 40 m, 0.94 ten steps of stairs; 30 people tested twice',
      mark: 'seen',
    },
    {
      source: 'measurement-theory',
      locator: 'standard error: deviation times the root of one less the reliability',
      mark: 'computed',
    },
  ],
  calculate: ({ test, standardDeviation }) => {
    const reliability = testReliability[test];
    const standardErrorOfMeasurement = standardDeviation * Math.sqrt(1 - reliability);
    const { mdc90, mdc95 } = minimalDetectableChange(standardErrorOfMeasurement);
    return answer({ reliability, standardErrorOfMeasurement, mdc90, mdc95 });
  },
  example: { test: 'fast-walk-40m', standardDeviation: 9 },
});

/** What the reliability says where no error fits, and what it does not. */
export const reliabilityWords = (test: Test): string =>
  `Done twice by people awaiting a knee arthroplasty it ranked them alike (${testReliability[test].toFixed(2)}, Tolk 2019), which is no error in its unit.`;

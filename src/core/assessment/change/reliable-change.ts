/**
 * Reliable change of one person between two measurements, Jacobson and Truax 1991.
 *
 * The change over the standard deviation of a difference; reliable when beyond 1.96. Early versions lack the
 * root of two. A reliable change need not be an important one, nor due to the treatment.
 */
import { calculation } from '#core/calculations/calculation.ts';
import type { Field, InputOf } from '#core/calculations/describe.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { exceeds } from './change-beyond-error.ts';
import { minimalDetectableChange } from './minimal-detectable-change.ts';

const criterion = 1.96;

const input = [
  {
    name: 'standardDeviation',
    kind: 'number',
    unit: '1',
    min: 0.001,
    max: 1e6,
    about: 'Between people, before treatment.',
  },
  { name: 'reliability', kind: 'number', unit: '1', min: 0, max: 1, about: 'Retest reliability, under 1.' },
  { name: 'before', kind: 'number', unit: '1', min: -1e6, max: 1e6 },
  { name: 'after', kind: 'number', unit: '1', min: -1e6, max: 1e6 },
] as const satisfies readonly Field[];

export interface ReliableChange {
  readonly standardErrorOfMeasurement: number;
  readonly differenceDeviation: number;
  readonly mdc95: number;
  readonly index: number;
  readonly reliable: boolean;
}

export const reliableChange = (given: InputOf<typeof input>): Outcome<ReliableChange> => {
  if (given.reliability === 1) {
    return refuse(
      'reliability',
      'outside-validity',
      'A reliability of exactly 1 leaves no error; give one under 1.',
    );
  }
  const error = given.standardDeviation * Math.sqrt(1 - given.reliability);
  const { differenceDeviation, mdc95 } = minimalDetectableChange(error);
  const index = (given.after - given.before) / differenceDeviation;
  return answer({
    standardErrorOfMeasurement: error,
    differenceDeviation,
    mdc95,
    index,
    reliable: exceeds(Math.abs(index), criterion),
  });
};

export const reliableChangeRow = calculation({
  id: 'reliable-change',
  title: 'Reliable change of one person',
  area: 'outcomes',
  input,
  result: [
    { name: 'standardErrorOfMeasurement', unit: '1' },
    { name: 'differenceDeviation', unit: '1' },
    { name: 'mdc95', unit: '1' },
    { name: 'index', unit: '1' },
    { name: 'reliable', unit: '', about: 'beyond 1.96 in either direction' },
  ],
  citations: [
    {
      source: 'jacobson-truax-1991',
      locator: 'index and the 1.96 criterion',
      mark: 'second-hand',
      remark: 'The worked example (32.5 to 47.5) is from memory of the paper.',
    },
  ],
  calculate: reliableChange,
  example: { standardDeviation: 7.5, reliability: 0.8, before: 32.5, after: 47.5 },
});

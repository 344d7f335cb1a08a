/** Repetitions to failure at a load, told as the range the equations give: estimates, never one figure. */
import { worked } from '#core/calculations/working.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { sides } from '#core/exercises/joints.ts';
import { figure } from '#core/review/plain-words.ts';
import { amount, type Judgement, type OutcomeLine, withoutNorm } from '../course/judgement.ts';
import { oneRepMaxRangeRow } from '../strength/one-rep-max-range.ts';
import { number, usually, whole } from './fields.ts';
import { measure } from './measure.ts';

interface Failure {
  readonly loadKg: number;
  readonly repetitions: number;
}

const rangeOf = ({ loadKg, repetitions }: Failure) => {
  const { working, outcome } = worked(oneRepMaxRangeRow, { loadKg, repetitions });
  return outcome.ok ? { working, low: outcome.result.lowKg, high: outcome.result.highKg } : null;
};

const noRange = 'A set this long gives no estimate of the one-repetition maximum.';

const norm = (row: Failure): Judgement => {
  const range = rangeOf(row);
  return range
    ? {
        sentence: `One-repetition maximum estimated at ${amount(range.low)} to ${amount(range.high)} kg, by equation. There is no norm; each person is compared with themselves.`,
        workings: [range.working],
      }
    : withoutNorm(noRange);
};

/** Beyond the spread between equations only where the two ranges lie apart. */
const change = (first: Failure, last: Failure): OutcomeLine['change'] => {
  const [before, after] = [rangeOf(first), rangeOf(last)];
  if (!before || !after) return { sentence: `Not compared. ${noRange}`, workings: [], verdict: 'not-judged' };
  const workings = [before.working, after.working];
  const ranges = `From ${amount(before.low)}–${amount(before.high)} kg to ${amount(after.low)}–${amount(after.high)} kg.`;
  const verdict = after.low > before.high ? 'better' : after.high < before.low ? 'worse' : 'within-error';
  const tail = {
    better:
      'The ranges lie apart: more than the equations disagree by. The error of the test from day to day is not on file.',
    worse:
      'The ranges lie apart, downwards: more than the equations disagree by. The error of the test from day to day is not on file.',
    'within-error': 'The ranges overlap: within what the equations disagree by, not called a change.',
  }[verdict];
  return { sentence: `${ranges} ${tail}`, workings, verdict };
};

export const repetitionsToFailure = measure({
  kind: 'repetitions-to-failure',
  title: 'Repetitions to failure at a load',
  fields: [
    { name: 'exerciseId', kind: 'text', minLength: 1, maxLength: 60 },
    { name: 'side', kind: 'enum', values: [...sides, 'both'] },
    number('loadKg', 'kg', 0, 300, 'Load'),
    whole('repetitions', '{rep}', 1, 200, 'Repetitions'),
  ],
  usual: [usually('repetitions', 1, 60, '{rep}')],
  sameBy: ['exerciseId', 'side'],
  subject: (row) => exerciseTitle(row.exerciseId),
  figure: (row) => row.loadKg,
  inWords: (row) => `${row.repetitions} repetitions with ${figure(row.loadKg)} kg`,
  course: {
    area: 'strength',
    subject: (row) => `${exerciseTitle(row.exerciseId)}, ${row.side}`,
    title: (subject) => `Strength test: ${subject}`,
    norm,
    change,
    drawnAt: (row) => {
      const range = rangeOf(row);
      return range && { low: range.low, high: range.high };
    },
    // The range is what the equations disagree by; the error from day to day is not on file.
    drawn: () => ({ unit: 'kg', error: null, cut: null, better: 'higher' }),
  },
  sides: {
    subject: (row) => exerciseTitle(row.exerciseId),
    side: (row) => (row.side === 'both' ? null : row.side),
    figure: (row) => {
      const range = rangeOf(row);
      return range && { low: range.low, high: range.high };
    },
    unit: ' kg',
    isRatio: true,
    error: null,
  },
});

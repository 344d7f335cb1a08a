/** Strength tests and girth over the course of care. Estimates are told as ranges. */
import { worked } from '#core/calculations/working.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import { girthChangeRow } from '../change/girth-change.ts';
import { oneRepMaxRangeRow } from '../strength/one-rep-max-range.ts';
import {
  amount,
  type Judgement,
  nothingToCompare,
  type OutcomeLine,
  signed,
  unjudged,
  withoutNorm,
} from './judgement.ts';
import { groupsOf, type Measured, type MeasuredOf } from './measured.ts';

type Failure = MeasuredOf<'repetitions-to-failure'>;

const rangeOf = ({ loadKg, repetitions }: Failure) => {
  const { working, outcome } = worked(oneRepMaxRangeRow, { loadKg, repetitions });
  return outcome.ok ? { working, low: outcome.result.lowKg, high: outcome.result.highKg } : null;
};

const noRange = 'A set this long gives no estimate of the one-repetition maximum.';

const strengthNorm = (row: Failure): Judgement => {
  const range = rangeOf(row);
  return range
    ? {
        sentence: `One-repetition maximum estimated at ${amount(range.low)} to ${amount(range.high)} kg, by equation. There is no norm; each person is compared with themselves.`,
        workings: [range.working],
      }
    : withoutNorm(noRange);
};

/** Beyond the spread between equations only where the two ranges lie apart. */
const strengthChange = (rows: readonly Failure[]): OutcomeLine['change'] => {
  if (rows.length < 2) return nothingToCompare;
  const [before, after] = [rangeOf(rows[0]!), rangeOf(rows.at(-1)!)];
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

const girthChange = (rows: readonly MeasuredOf<'limb-circumference'>[]): OutcomeLine['change'] => {
  if (rows.length < 2) return nothingToCompare;
  const { working, outcome } = worked(girthChangeRow, {
    beforeCm: rows[0]!.circumferenceCm,
    afterCm: rows.at(-1)!.circumferenceCm,
  });
  if (!outcome.ok) return nothingToCompare;
  const { change, minimalDetectableChange, beyondError } = outcome.result;
  const error = `the error of measuring ${amount(minimalDetectableChange)} cm (from memory)`;
  return {
    sentence: beyondError
      ? `${signed(change)} cm, beyond ${error}: a change. A tape cannot tell muscle from swelling.`
      : `${signed(change)} cm, within ${error}: not called a change.`,
    workings: [working],
    verdict: 'not-judged',
  };
};

const exerciseTitle = (id: string): string => exerciseById(id)?.title ?? id;

export const strengthLines = (rows: readonly Measured[]): readonly OutcomeLine[] => [
  ...groupsOf(rows, 'repetitions-to-failure', (row) => `${exerciseTitle(row.exerciseId)}, ${row.side}`).map(
    ({ subject, rows: own }) => ({
      key: `repetitions-to-failure ${subject}`,
      kind: 'repetitions-to-failure',
      title: `Strength test: ${subject}`,
      readings: own.map(({ day, repetitions, loadKg }) => ({
        day,
        text: `${repetitions} repetitions with ${amount(loadKg)} kg`,
      })),
      norm: strengthNorm(own.at(-1)!),
      change: strengthChange(own),
    }),
  ),
  ...groupsOf(rows, 'isometric-force', (row) => `${row.site}, ${row.side}`).map(({ subject, rows: own }) => ({
    key: `isometric-force ${subject}`,
    kind: 'isometric-force',
    title: `Isometric force: ${subject}`,
    readings: own.map(({ day, forceN }) => ({ day, text: `${amount(forceN)} N` })),
    norm: withoutNorm('No norm is on file; each person is compared with themselves.'),
    change:
      own.length < 2
        ? nothingToCompare
        : unjudged(own.at(-1)!.forceN - own[0]!.forceN, ' N', 'No error of measuring force is on file.'),
  })),
  ...groupsOf(rows, 'limb-circumference', (row) => `${row.side} ${row.limb}, ${row.site}`).map(
    ({ subject, rows: own }) => ({
      key: `limb-circumference ${subject}`,
      kind: 'limb-circumference',
      title: `Girth: ${subject}`,
      readings: own.map(({ day, circumferenceCm }) => ({ day, text: `${amount(circumferenceCm)} cm` })),
      norm: withoutNorm('There is no norm; compare with the other side, measured at the same place.'),
      change: girthChange(own),
    }),
  ),
];

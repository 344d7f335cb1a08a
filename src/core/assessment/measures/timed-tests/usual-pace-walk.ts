/** A walk at usual pace over a distance that is said, told as a speed against its cuts and what matters in a sore knee. */
import { worked } from '#core/calculations/working.ts';
import { figure } from '#core/review/plain-words.ts';
import { whyNoError } from '../../change/against-error.ts';
import type { ErrorGroup } from '../../change/error-group.ts';
import { type Judgement, type OutcomeLine, withoutNorm } from '../../course/judgement.ts';
import type { Person } from '../../course/measured.ts';
import { gaitSpeedRow } from '../../function-tests/gait-speed.ts';
import { gaitSpeedChangeRow } from '../../function-tests/gait-speed-change.ts';
import { gaitSpeedDifferenceKneeRow } from '../../function-tests/gait-speed-difference-knee.ts';
import { number } from '../fields.ts';
import { measure } from '../measure.ts';

interface Walked {
  readonly distanceM: number;
  readonly seconds: number;
}

const speedOf = ({ distanceM, seconds }: Walked): number => distanceM / seconds;

const inMPerS = (speed: number): string => `${speed.toFixed(2)} m/s`;

const norm = ({ distanceM, seconds }: Walked): Judgement => {
  const { working, outcome } = worked(gaitSpeedRow, { distanceM, seconds });
  if (!outcome.ok) return withoutNorm('No cut-off holds for this speed.');
  const { speedMPerS, lowPerformance, underOne } = outcome.result;
  const place = lowPerformance ? 'low performance' : underOne ? 'under 1.0 m/s, not low' : 'under neither';
  return {
    sentence: `0.8 m/s or less is low performance; under 1.0 m/s went with later limitation of the legs: ${inMPerS(speedMPerS)} is ${place}. None of these was made for painful joints.`,
    workings: [working],
  };
};

const inKnees: readonly (ErrorGroup | null)[] = ['knee-osteoarthritis-mild', 'knee-arthroplasty-awaited'];

const importanceWords = {
  'by-no-method': 'less than any method calls important',
  'by-some': 'important by some methods and not by others',
  'by-all': 'important by every method',
} as const;

const olderAdultsWords = {
  'under-small': 'less than a small meaningful change',
  small: 'a small meaningful change or more',
  substantial: 'a substantial meaningful change or more',
} as const;

/** How large the difference is, to people like this one; never that it is a change. */
const sizeOf = (beforeMPerS: number, afterMPerS: number, group: ErrorGroup | null) => {
  if (inKnees.includes(group)) {
    const { working, outcome } = worked(gaitSpeedDifferenceKneeRow, { beforeMPerS, afterMPerS });
    const said = outcome.ok ? importanceWords[outcome.result.important] : null;
    return {
      working,
      words: said && `In knee osteoarthritis (0.068 to 0.115 m/s, Gilbert 2021) the difference is ${said}.`,
    };
  }
  const { working, outcome } = worked(gaitSpeedChangeRow, { beforeMPerS, afterMPerS });
  const said = outcome.ok ? olderAdultsWords[outcome.result.size] : null;
  return { working, words: said && `In older adults (0.05 and 0.10 m/s, from memory) it is ${said}.` };
};

const change = (first: Walked, last: Walked, { errorGroup }: Person): OutcomeLine['change'] => {
  const [before, after] = [speedOf(first), speedOf(last)];
  const { working, words } = sizeOf(before, after, errorGroup);
  // One decimal would hide most of what matters here.
  const difference = `${after > before ? '+' : ''}${inMPerS(after - before).replace('-', '−')}`;
  const why = [`${difference}.`, whyNoError(errorGroup), words ?? ''].filter(Boolean).join(' ');
  return {
    sentence: `${why} A difference is shown and not called a change.`,
    workings: [working],
    verdict: 'not-judged',
  };
};

export const usualPaceWalk = measure({
  kind: 'usual-pace-walk',
  title: 'Walk at usual pace',
  isChosen: true,
  fields: [number('distanceM', 'm', 2, 100, 'Distance'), number('seconds', 's', 1, 600, 'Time')],
  hints: { distanceM: 'Measured between two marks; the steps before and after them are not timed.' },
  sameBy: ['distanceM'],
  subject: (row) => `${figure(row.distanceM)} m`,
  figure: speedOf,
  consistent: (row) =>
    speedOf(row) > 5
      ? [
          {
            field: 'input.seconds',
            code: 'inconsistent',
            reason: 'That is faster than 5 m/s; check distance and time.',
          },
        ]
      : [],
  farFromLast: { percent: 60, figures: (row) => [{ value: row.seconds, unit: 's' }] },
  inWords: (row) => `${figure(row.distanceM)} m in ${figure(row.seconds)} s (${inMPerS(speedOf(row))})`,
  course: {
    area: 'function',
    subject: (row) => `${figure(row.distanceM)} m`,
    title: (subject) => `Walk at usual pace: ${subject}`,
    norm,
    change,
    drawnAt: (row) => Math.round(speedOf(row) * 100) / 100,
    drawn: () => ({
      unit: 'm/s',
      error: null,
      cut: { at: 0.8, words: '0.8 m/s or less: low performance' },
      better: 'higher',
    }),
  },
});

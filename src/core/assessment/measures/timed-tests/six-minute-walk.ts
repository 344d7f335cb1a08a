/** How far a person walks in six minutes. Its error is known before an arthroplasty only. */
import { worked } from '#core/calculations/working.ts';
import { whoseError, withoutError } from '../../change/against-error.ts';
import {
  changeBeforeArthroplastyRow,
  errorBeforeArthroplasty,
} from '../../change/change-before-arthroplasty.ts';
import { awaitedJoint } from '../../change/error-group.ts';
import { changeWords, nothingToCompare, type OutcomeLine, withoutNorm } from '../../course/judgement.ts';
import type { Person } from '../../course/measured.ts';
import { usually, whole } from '../fields.ts';
import { measure } from '../measure.ts';

interface Walked {
  readonly metres: number;
}

const change = (first: Walked, last: Walked, { errorGroup }: Person): OutcomeLine['change'] => {
  const joint = awaitedJoint(errorGroup);
  const [before, after] = [first.metres, last.metres];
  if (!joint || !errorGroup) return withoutError(after - before, ' m', errorGroup);
  const { working, outcome } = worked(changeBeforeArthroplastyRow, {
    test: 'six-minute-walk',
    joint,
    before,
    after,
  });
  if (!outcome.ok) return nothingToCompare;
  return {
    sentence: `${changeWords(outcome.result, ' m')} ${whoseError(errorGroup, 'Naylor 2014')}`,
    workings: [working],
    verdict: outcome.result.direction,
    errorGroup,
  };
};

export const sixMinuteWalk = measure({
  kind: 'six-minute-walk',
  title: '6-minute walk',
  isChosen: true,
  fields: [whole('metres', 'm', 0, 1000, 'Distance')],
  usual: [usually('metres', 60, 750, 'm')],
  hints: { metres: 'Rests counted as part of the six minutes; the same course and aid each time.' },
  figure: (row) => row.metres,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.metres, unit: 'm' }] },
  inWords: (row) => `${row.metres} m`,
  course: {
    area: 'function',
    norm: () => withoutNorm('No norm is on file; each person is compared with themselves.'),
    change,
    drawnAt: (row) => row.metres,
    drawn: (first, _last, { errorGroup }) => {
      const joint = awaitedJoint(errorGroup);
      const error = joint && errorBeforeArthroplasty('six-minute-walk', joint, first.metres);
      return { unit: 'm', error, cut: null, better: 'higher' };
    },
  },
});

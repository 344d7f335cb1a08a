/** Up and down a flight of stairs, timed; comparable only on the same number of steps. */
import { figure } from '#core/review/plain-words.ts';
import { withoutError } from '../../change/against-error.ts';
import { reliabilityWords } from '../../change/test-reliability.ts';
import { withoutNorm } from '../../course/judgement.ts';
import { number, usually, whole } from '../fields.ts';
import { measure } from '../measure.ts';

export const stairClimb = measure({
  kind: 'stair-climb',
  title: 'Stairs up and down',
  isChosen: true,
  fields: [whole('steps', '1', 3, 30, 'Steps of the flight'), number('seconds', 's', 2, 300, 'Time')],
  usual: [usually('seconds', 4, 90, 's')],
  hints: { seconds: 'Up, turn and down again; the rail and an aid as they are needed.' },
  sameBy: ['steps'],
  subject: (row) => `${row.steps} steps`,
  figure: (row) => row.seconds,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.seconds, unit: 's' }] },
  inWords: (row) => `${figure(row.seconds)} s, ${row.steps} steps`,
  course: {
    area: 'function',
    subject: (row) => `${row.steps} steps`,
    title: (subject) => `Stairs up and down: ${subject}`,
    norm: () => withoutNorm('No norm is on file; each person is compared with themselves on the same steps.'),
    change: (first, last, { errorGroup }) =>
      withoutError(
        last.seconds - first.seconds,
        ' s',
        errorGroup,
        errorGroup === 'knee-arthroplasty-awaited' ? reliabilityWords('stair-climb') : '',
      ),
    drawnAt: (row) => row.seconds,
    drawn: () => ({ unit: 's', error: null, cut: null, better: 'lower' }),
  },
});

/** 40 metres as fast as the person can walk, four times ten, in seconds; told with the speed. */
import { figure } from '#core/review/plain-words.ts';
import { withoutError } from '../../change/against-error.ts';
import { reliabilityWords } from '../../change/test-reliability.ts';
import { withoutNorm } from '../../course/judgement.ts';
import { number, usually } from '../fields.ts';
import { measure } from '../measure.ts';

const metres = 40;

const speed = (seconds: number): string => (metres / seconds).toFixed(2);

export const fastWalk = measure({
  kind: 'fast-walk-40m',
  title: '40 m fast walk',
  isChosen: true,
  fields: [number('seconds', 's', 10, 300, 'Time for 40 m')],
  usual: [usually('seconds', 15, 90, 's')],
  hints: { seconds: 'Four times ten metres, the turns not counted; the same shoes and aid each time.' },
  figure: (row) => row.seconds,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.seconds, unit: 's' }] },
  inWords: (row) => `${figure(row.seconds)} s (${speed(row.seconds)} m/s)`,
  course: {
    area: 'function',
    norm: () => withoutNorm('No norm is on file; each person is compared with themselves.'),
    change: (first, last, { errorGroup }) =>
      withoutError(
        last.seconds - first.seconds,
        ' s',
        errorGroup,
        errorGroup === 'knee-arthroplasty-awaited' ? reliabilityWords('fast-walk-40m') : '',
      ),
    drawnAt: (row) => row.seconds,
    drawn: () => ({ unit: 's', error: null, cut: null, better: 'lower' }),
  },
});

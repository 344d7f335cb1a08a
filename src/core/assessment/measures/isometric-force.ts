/** Isometric force of a muscle group against a dynamometer. */
import { figure } from '#core/review/plain-words.ts';
import { unjudged, withoutNorm } from '../course/judgement.ts';
import { number, side, usually, word } from './fields.ts';
import { measure } from './measure.ts';

export const isometricForce = measure({
  kind: 'isometric-force',
  title: 'Isometric force',
  fields: [word('site', 'Muscle group'), side, number('forceN', 'N', 0, 3000, 'Force')],
  usual: [usually('forceN', 10, 1200, 'N')],
  sameBy: ['site', 'side'],
  subject: (row) => row.site,
  figure: (row) => row.forceN,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.forceN, unit: 'N' }] },
  inWords: (row) => `${figure(row.forceN)} N`,
  course: {
    area: 'strength',
    subject: (row) => `${row.site}, ${row.side}`,
    title: (subject) => `Isometric force: ${subject}`,
    norm: () => withoutNorm('No norm is on file; each person is compared with themselves.'),
    drawnAt: (row) => row.forceN,
    drawn: () => ({ unit: 'N', error: null, cut: null, better: 'higher' }),
    change: (first, last) =>
      unjudged(last.forceN - first.forceN, ' N', 'No error of measuring force is on file.'),
  },
});

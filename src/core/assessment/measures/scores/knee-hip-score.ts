/**
 * The short pain or function score of a knee or hip questionnaire, as a number that was worked out elsewhere.
 *
 * Whoever holds the licence asks its questions; none stands here. Counted from 0, the worst, to 100, the best.
 * The errors on file, 20.2 and 21.6 points before an arthroplasty, are of the long pain scales and are not used.
 */
import { figure, jointInWords } from '#core/review/plain-words.ts';
import { withoutError } from '../../change/against-error.ts';
import { withoutNorm } from '../../course/judgement.ts';
import { number } from '../fields.ts';
import { measure } from '../measure.ts';

const scales = ['pain', 'function'] as const;

export const kneeHipScore = measure({
  kind: 'knee-hip-score',
  title: 'KOOS or HOOS short score',
  isChosen: true,
  needsLicence: true,
  fields: [
    {
      name: 'joint',
      kind: 'enum',
      values: ['left-knee', 'right-knee', 'left-hip', 'right-hip'],
      about: 'Joint',
    },
    { name: 'scale', kind: 'enum', values: scales, about: 'Scale' },
    number('score', '{score}', 0, 100, 'Score'),
  ],
  hints: {
    score: '0 the worst, 100 the best. One that counts the other way round is taken from 100 first.',
  },
  sameBy: ['joint', 'scale'],
  subject: (row) => `${jointInWords(row.joint)}, ${row.scale}`,
  figure: (row) => row.score,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.score, unit: 'points' }] },
  inWords: (row) => `${figure(row.score)} of 100`,
  course: {
    area: 'patient',
    subject: (row) => `${jointInWords(row.joint)}, ${row.scale}`,
    title: (subject) => `KOOS or HOOS short score: ${subject}`,
    norm: () => withoutNorm('No norm is on file. 0 is the worst, 100 the best.'),
    change: (first, last, { errorGroup }) => withoutError(last.score - first.score, ' points', errorGroup),
    drawnAt: (row) => row.score,
    drawn: () => ({ unit: 'points', error: null, cut: null, better: 'higher' }),
  },
});

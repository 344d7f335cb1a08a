/**
 * Pinch strength with a pinch gauge: of the tip, thumb against fingertip, or as a key is held, thumb against the
 * side of the index finger. Each is a measure of its own. No norm and no error of measuring is on file.
 */
import { figure } from '#core/review/plain-words.ts';
import { unjudged, withoutNorm } from '../course/judgement.ts';
import { number, side, usually } from './fields.ts';
import { measure } from './measure.ts';

const pinches = ['tip', 'key'] as const;

export const pinch = measure({
  kind: 'pinch',
  title: 'Pinch strength',
  fields: [
    { name: 'pinch', kind: 'enum', values: pinches, about: 'Pinch' },
    side,
    number('forceKg', 'kg', 0, 25, 'Force'),
  ],
  usual: [usually('forceKg', 0.5, 14, 'kg')],
  sameBy: ['pinch', 'side'],
  subject: (row) => `${row.pinch} pinch`,
  figure: (row) => row.forceKg,
  farFromLast: { percent: 60, figures: (row) => [{ value: row.forceKg, unit: 'kg' }] },
  inWords: (row) => `${row.pinch} pinch, ${figure(row.forceKg)} kg`,
  course: {
    area: 'function',
    subject: (row) => `${row.pinch}, ${row.side}`,
    title: (subject) => `Pinch strength, ${subject}`,
    reading: (row) => `${figure(row.forceKg)} kg`,
    norm: () =>
      withoutNorm(
        'No norm is on file; compare with the other hand. A sore thumb base lowers pinch by itself.',
      ),
    drawnAt: (row) => row.forceKg,
    drawn: () => ({ unit: 'kg', error: null, cut: null, better: 'higher' }),
    change: (first, last) =>
      unjudged(last.forceKg - first.forceKg, ' kg', 'No error of measuring pinch is on file.'),
  },
  sides: {
    subject: (row) => row.pinch,
    side: (row) => row.side,
    figure: (row) => row.forceKg,
    unit: ' kg',
    isRatio: true,
    error: null,
  },
});

/** Stature. */
import { figure } from '#core/review/plain-words.ts';
import { number, usually } from './fields.ts';
import { measure } from './measure.ts';

export const stature = measure({
  kind: 'stature',
  title: 'Height',
  fields: [number('statureCm', 'cm', 100, 250, 'Height')],
  usual: [usually('statureCm', 140, 205, 'cm')],
  figure: (row) => row.statureCm,
  farFromLast: { percent: 3, figures: (row) => [{ value: row.statureCm, unit: 'cm' }] },
  inWords: (row) => `${figure(row.statureCm)} cm`,
});

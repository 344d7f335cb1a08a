/** Body mass. */
import { figure } from '#core/review/plain-words.ts';
import { number, usually } from './fields.ts';
import { measure } from './measure.ts';

export const bodyMass = measure({
  kind: 'body-mass',
  title: 'Weight',
  fields: [number('massKg', 'kg', 25, 350, 'Weight')],
  usual: [usually('massKg', 40, 160, 'kg')],
  figure: (row) => row.massKg,
  farFromLast: { percent: 10, figures: (row) => [{ value: row.massKg, unit: 'kg' }] },
  inWords: (row) => `${figure(row.massKg)} kg`,
});

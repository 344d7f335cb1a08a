/** Body fat, by whatever method was used. */
import { figure } from '#core/review/plain-words.ts';
import { number, usually, word } from './fields.ts';
import { measure } from './measure.ts';

export const bodyFat = measure({
  kind: 'body-fat',
  title: 'Body fat',
  fields: [number('bodyFatPercent', '%', 2, 75, 'Body fat'), word('method', 'How it was measured')],
  usual: [usually('bodyFatPercent', 8, 55, '%')],
  figure: (row) => row.bodyFatPercent,
  inWords: (row) => `${figure(row.bodyFatPercent)} %, ${row.method}`,
});

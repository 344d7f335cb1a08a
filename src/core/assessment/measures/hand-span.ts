/** From the tip of the thumb to the tip of the little finger, the hand spread as wide as it goes. */
import { figure } from '#core/review/plain-words.ts';
import { unjudged, withoutNorm } from '../course/judgement.ts';
import { side, usually, whole } from './fields.ts';
import { measure } from './measure.ts';

export const handSpan = measure({
  kind: 'hand-span',
  title: 'Hand span',
  fields: [side, whole('spanMm', 'mm', 20, 320, 'Thumb tip to little fingertip')],
  usual: [usually('spanMm', 100, 260, 'mm')],
  sameBy: ['side'],
  figure: (row) => row.spanMm,
  farFromLast: { percent: 25, figures: (row) => [{ value: row.spanMm, unit: 'mm' }] },
  inWords: (row) => `${figure(row.spanMm)} mm`,
  course: {
    area: 'function',
    subject: (row) => row.side,
    title: (subject) => `Hand span, ${subject}`,
    norm: () => withoutNorm('There is no norm; compare with the other hand.'),
    drawnAt: (row) => row.spanMm,
    drawn: () => ({ unit: 'mm', error: null, cut: null, better: 'higher' }),
    change: (first, last) =>
      unjudged(last.spanMm - first.spanMm, ' mm', 'No error of measuring a span is on file.'),
  },
  sides: {
    subject: () => '',
    side: (row) => row.side,
    figure: (row) => row.spanMm,
    unit: ' mm',
    // A share of the other span says nothing of how far the hand opens from closed.
    isRatio: false,
    error: null,
  },
});

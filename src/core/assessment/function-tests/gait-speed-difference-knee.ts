/**
 * A difference of walking speed at usual pace that matters in knee osteoarthritis: 4.1 to 6.9 m a minute, by
 * method. Under the lower no method calls it important; from the upper on all of them do.
 *
 * An importance between people, over 20 m, and no error of measuring: a difference this large can still be
 * within error.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from '../change/change-beyond-error.ts';

type Important = 'by-no-method' | 'by-some' | 'by-all';

const metresPerMinute = { low: 4.1, high: 6.9 } as const;
const importantMPerS = { low: metresPerMinute.low / 60, high: metresPerMinute.high / 60 } as const;

export const gaitSpeedDifferenceKneeRow = calculation({
  id: 'gait-speed-difference-knee',
  title: 'Important difference of walking speed in knee osteoarthritis',
  area: 'outcomes',
  input: [
    { name: 'beforeMPerS', kind: 'number', unit: 'm/s', min: 0, max: 5 },
    { name: 'afterMPerS', kind: 'number', unit: 'm/s', min: 0, max: 5 },
  ],
  result: [
    { name: 'changeMPerS', unit: 'm/s' },
    { name: 'important', unit: '', about: 'by-no-method, by-some or by-all' },
  ],
  citations: [
    {
      source: 'gilbert-2021',
      locator: 'abstract: 4.1 to 6.9 m/min on the 20 m walk, 2527 people',
      mark: 'seen',
      remark: '0.068 to 0.115 m/s.',
    },
  ],
  calculate: ({ beforeMPerS, afterMPerS }) => {
    const changeMPerS = afterMPerS - beforeMPerS;
    const size = Math.abs(changeMPerS);
    const important: Important = !exceeds(importantMPerS.high, size)
      ? 'by-all'
      : exceeds(importantMPerS.low, size)
        ? 'by-no-method'
        : 'by-some';
    return answer({ changeMPerS, important }, [
      {
        code: 'no-error-figure',
        text: 'Importance is no error: whether it is a change at all is not known.',
      },
    ]);
  },
  example: { beforeMPerS: 1.02, afterMPerS: 1.12 },
});

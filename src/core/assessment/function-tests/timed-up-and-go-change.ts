/**
 * Change on the timed up and go against its error: 1.10 s with the same rater, 1.14 s with another.
 *
 * From knee osteoarthritis of radiographic grade 1 to 3.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { judgeChange, judgedChangeFields } from '../change/change-beyond-error.ts';

const minimalDetectableSeconds = { same: 1.1, other: 1.14 } as const;

export const timedUpAndGoChangeRow = calculation({
  id: 'timed-up-and-go-change',
  title: 'Change on the timed up and go',
  area: 'outcomes',
  input: [
    { name: 'beforeSeconds', kind: 'number', unit: 's', min: 2, max: 300 },
    { name: 'afterSeconds', kind: 'number', unit: 's', min: 2, max: 300 },
    { name: 'rater', kind: 'enum', values: ['same', 'other'] },
  ],
  result: judgedChangeFields('s'),
  citations: [
    { source: 'alghadir-2015', locator: 'minimal detectable change within and between raters', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(
      judgeChange(input.beforeSeconds, input.afterSeconds, minimalDetectableSeconds[input.rater], 'lower'),
    ),
  example: { beforeSeconds: 12.6, afterSeconds: 11.2, rater: 'same' },
});

/**
 * Change of a limb's girth against the error of the tape: 1.5 cm, from memory and with little confidence.
 *
 * Recalled are about 1 cm at the joint line and 1 to 1.5 cm at the thigh; the wider is used, because calling
 * too little a change does less harm. A clinic's own double measures give a better figure. A tape cannot tell
 * muscle from swelling, so no direction is called better.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { exceeds } from './change-beyond-error.ts';

const minimalDetectableCm = 1.5;

const girth = <const N extends string>(name: N) =>
  ({ name, kind: 'number', unit: 'cm', min: 10, max: 120 }) as const;

export const girthChangeRow = calculation({
  id: 'girth-change',
  title: 'Change of a limb’s girth',
  area: 'outcomes',
  input: [girth('beforeCm'), girth('afterCm')],
  result: [
    { name: 'change', unit: 'cm', about: 'after less before' },
    { name: 'minimalDetectableChange', unit: 'cm' },
    { name: 'beyondError', unit: '' },
  ],
  citations: [
    {
      source: 'girth-recalled',
      locator: 'smallest real difference about 1 cm at the joint line, 1 to 1.5 cm at the thigh',
      mark: 'memory',
      remark: 'Measure twice and work out your own with the detectable change from double measures.',
    },
  ],
  calculate: (input) => {
    const change = input.afterCm - input.beforeCm;
    return answer(
      {
        change,
        minimalDetectableChange: minimalDetectableCm,
        beyondError: exceeds(Math.abs(change), minimalDetectableCm),
      },
      [
        {
          code: 'from-memory',
          text: 'The detectable change of 1.5 cm is from memory, with little confidence.',
        },
      ],
    );
  },
  example: { beforeCm: 48, afterCm: 50 },
});

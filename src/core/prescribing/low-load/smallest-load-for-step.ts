/**
 * From which load on a step of fixed size stays within the window: step ÷ 10 %. A 0.5 kg step wants
 * 5 kg. A two-sided bar steps by twice its smallest plate. Below that load add repetitions instead.
 */

import { loadField } from '#core/assessment/strength/fields.ts';
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { largestStepPercent, stepCitations } from './load-step.ts';

export const smallestLoadForStep = (input: {
  readonly plateKg: number;
  readonly sides: number;
  readonly percent?: number;
}): Outcome<{ readonly stepKg: number; readonly smallestLoadKg: number }> => {
  const stepKg = input.plateKg * input.sides;
  return answer({ stepKg, smallestLoadKg: (stepKg * 100) / (input.percent ?? largestStepPercent) });
};

export const smallestLoadForStepRow = calculation({
  id: 'smallest-load-for-step',
  title: 'Smallest load at which a step stays within the window',
  area: 'strength',
  input: [
    loadField('plateKg', 'Smallest plate or cuff step.'),
    { name: 'sides', kind: 'integer', unit: '1', min: 1, max: 2, about: '2 for a bar loaded on both ends.' },
    {
      name: 'percent',
      kind: 'number',
      unit: '%',
      min: 1,
      max: 100,
      optional: true,
      about: '10 when left out.',
    },
  ],
  result: units({ stepKg: 'kg', smallestLoadKg: 'kg' }),
  citations: stepCitations,
  calculate: smallestLoadForStep,
  example: { plateKg: 0.5, sides: 2 },
});

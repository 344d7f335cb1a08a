/**
 * The load for a percentage of the maximum, rounded to what the patient owns, and the percentage it
 * really is after rounding. Arithmetic; how good the maximum is stands with the estimate.
 */

import { availableField, loadField } from '#core/assessment/strength/fields.ts';
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, type Outcome } from '#core/outcome.ts';
import { roundingCitations, roundLoad } from './load-rounding.ts';

export interface LoadForPercent {
  readonly targetKg: number;
  readonly loadKg: number;
  readonly truePercent: number;
  readonly offPercent: number;
}

export const loadForPercent = (input: {
  readonly oneRepMaxKg: number;
  readonly percent: number;
  readonly availableKg: readonly number[];
  readonly neverAbove?: boolean;
}): Outcome<LoadForPercent> => {
  const targetKg = (input.oneRepMaxKg * input.percent) / 100;
  const rounded = roundLoad({
    targetKg,
    availableKg: input.availableKg,
    neverAbove: input.neverAbove ?? true,
  });
  if (!rounded.ok) return rounded;
  const { loadKg, offPercent } = rounded.result;
  return answer({ targetKg, loadKg, truePercent: (loadKg / input.oneRepMaxKg) * 100, offPercent });
};

export const loadForPercentRow = calculation({
  id: 'load-for-percent',
  title: 'Load for a percentage of the maximum, with the percentage it really is',
  area: 'strength',
  input: [
    loadField('oneRepMaxKg', 'Measured or estimated.'),
    { name: 'percent', kind: 'number', unit: '%', min: 1, max: 100 },
    availableField,
    {
      name: 'neverAbove',
      kind: 'flag',
      optional: true,
      about: 'Yes when left out; no takes the nearest load, a tie to the lighter.',
    },
  ],
  result: units({ targetKg: 'kg', loadKg: 'kg', truePercent: '%', offPercent: '%' }),
  citations: roundingCitations,
  calculate: loadForPercent,
  example: { oneRepMaxKg: 11, percent: 40, availableKg: [1, 2, 3, 4, 5, 6] },
});

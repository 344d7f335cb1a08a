/**
 * A computed load rounded to what the patient can pick up: the nearest, a tie to the lighter one;
 * "never above" takes the heaviest that is not over the target. A rule of this tool, no source. It
 * tells by how much the load now differs, because with few dumbbells that can be a third.
 */

import { availableField, loadField } from '#core/assessment/strength/fields.ts';
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { milligrams } from '#core/units/units.ts';

export interface RoundedLoad {
  readonly loadKg: number;
  readonly offPercent: number;
}

const nearestFirst = (targetMg: number) => (first: number, second: number) =>
  Math.abs(milligrams(first) - targetMg) - Math.abs(milligrams(second) - targetMg) || first - second;

export const roundLoad = (input: {
  readonly targetKg: number;
  readonly availableKg: readonly number[];
  readonly neverAbove?: boolean;
}): Outcome<RoundedLoad> => {
  if (input.availableKg.length === 0) {
    return refuse('availableKg', 'missing', 'List at least one load the patient owns.');
  }
  const targetMg = milligrams(input.targetKg);
  const candidates = input.neverAbove
    ? input.availableKg.filter((loadKg) => milligrams(loadKg) <= targetMg)
    : [...input.availableKg];
  const loadKg = candidates.sort(nearestFirst(targetMg))[0];
  if (loadKg === undefined) {
    const lightest = Math.min(...input.availableKg);
    const reason = `The lightest load owned is ${lightest} kg, above the target of ${input.targetKg} kg. Lend a lighter one, or raise the target knowingly.`;
    return refuse('availableKg', 'inconsistent', reason);
  }
  return answer({ loadKg, offPercent: ((loadKg - input.targetKg) / input.targetKg) * 100 });
};

/** Rounding follows the direction of the published 2–10 % step; the rule itself is our choice. */
export const roundingCitations: readonly Citation[] = [
  {
    source: 'acsm-2009',
    locator: 'abstract: steps of 2–10 %',
    mark: 'design',
    remark: 'The rounding rule is a choice of this tool; the source gives only the size of a step.',
  },
];

export const loadRoundingRow = calculation({
  id: 'load-rounding',
  title: 'Load rounded to what the patient owns',
  area: 'strength',
  input: [
    loadField('targetKg', 'Load wished for.'),
    availableField,
    {
      name: 'neverAbove',
      kind: 'flag',
      optional: true,
      about: 'Take the heaviest load not above the target.',
    },
  ],
  result: [
    { name: 'loadKg', unit: 'kg' },
    { name: 'offPercent', unit: '%', about: 'Signed difference from the target.' },
  ],
  citations: roundingCitations,
  calculate: roundLoad,
  example: { targetKg: 4.6, availableKg: [1, 2, 3, 4, 5, 6, 8, 10] },
});

/** The same set through every equation that holds for it: the spread is the honest answer. */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import { equationCitations, equationIds, equations, isInRange, outsideRange } from './equations/all.ts';
import type { EquationId } from './equations/equation.ts';
import { accuracyCitations } from './estimate-citations.ts';
import { loadField, repetitionsField } from './fields.ts';
import { estimateNotMeasured, noEstimateFromLongSets } from './low-load-tests.ts';

export interface OneRepMaxRange {
  readonly lowKg: number;
  readonly highKg: number;
  readonly byEquation: Readonly<Partial<Record<EquationId, number>>>;
  readonly leftOut: readonly { readonly equation: EquationId; readonly reason: string }[];
}

export const oneRepMaxRange = (input: {
  readonly loadKg: number;
  readonly repetitions: number;
}): Outcome<OneRepMaxRange> => {
  const inRange = equationIds.filter((id) => isInRange(equations[id], input.repetitions));
  if (inRange.length === 0) return refuse('repetitions', 'outside-validity', noEstimateFromLongSets.text);
  const byEquation: Partial<Record<EquationId, number>> = {};
  for (const id of inRange) byEquation[id] = input.loadKg * equations[id].factor(input.repetitions);
  const estimates = Object.values(byEquation);
  const leftOut = equationIds
    .filter((id) => !inRange.includes(id))
    .map((id) => ({ equation: id, reason: outsideRange(equations[id], input.repetitions) }));
  return answer({ lowKg: Math.min(...estimates), highKg: Math.max(...estimates), byEquation, leftOut }, [
    estimateNotMeasured,
  ]);
};

export const oneRepMaxRangeRow = calculation({
  id: 'one-rep-max-range',
  title: 'Spread of the one-repetition maximum between equations',
  area: 'strength',
  input: [loadField('loadKg', 'Load lifted.'), repetitionsField],
  result: [
    { name: 'lowKg', unit: 'kg' },
    { name: 'highKg', unit: 'kg' },
    { name: 'byEquation', unit: 'kg', about: 'One estimate per equation that holds for this set.' },
    { name: 'leftOut', unit: '', about: 'Equations that do not hold for it, with the reason.' },
  ],
  citations: [...equationCitations, ...accuracyCitations],
  calculate: oneRepMaxRange,
  example: { loadKg: 40, repetitions: 8 },
});

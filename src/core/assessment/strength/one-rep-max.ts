/** One-repetition maximum by one named equation, inside the repetitions it is shown for. */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import { equationCitations, equations, isInRange, outsideRange } from './equations/all.ts';
import type { EquationId } from './equations/equation.ts';
import { accuracyCitations } from './estimate-citations.ts';
import { equationField, loadField, repetitionsField } from './fields.ts';
import { estimateNotMeasured, longestSetForEstimate, noEstimateFromLongSets } from './low-load-tests.ts';

export interface OneRepMaxInput {
  readonly equation: EquationId;
  readonly loadKg: number;
  readonly repetitions: number;
}

const remedy = (input: OneRepMaxInput): string => {
  if (input.repetitions > longestSetForEstimate) return noEstimateFromLongSets.text;
  if (input.repetitions === 1) return 'A load lifted once and not twice is the maximum itself.';
  return 'Choose an equation shown for this many repetitions.';
};

const errorNote = (equation: EquationId): Note => {
  const { errorReported, population } = equations[equation];
  return {
    code: 'equation-error',
    text: `Fitted in: ${population}. Error reported: ${errorReported ?? 'none found for this equation'}.`,
  };
};

export const oneRepMax = (input: OneRepMaxInput): Outcome<{ readonly oneRepMaxKg: number }> => {
  const equation = equations[input.equation];
  if (!isInRange(equation, input.repetitions)) {
    const reason = `${outsideRange(equation, input.repetitions)} ${remedy(input)}`;
    return refuse('repetitions', 'outside-validity', reason);
  }
  const oneRepMaxKg = input.loadKg * equation.factor(input.repetitions);
  return answer({ oneRepMaxKg }, [errorNote(input.equation), estimateNotMeasured]);
};

export const oneRepMaxRow = calculation({
  id: 'one-rep-max',
  title: 'One-repetition maximum by one equation',
  area: 'strength',
  input: [equationField, loadField('loadKg', 'Load lifted.'), repetitionsField],
  result: [{ name: 'oneRepMaxKg', unit: 'kg' }],
  citations: [...equationCitations, ...accuracyCitations],
  calculate: oneRepMax,
  example: { equation: 'brzycki', loadKg: 40, repetitions: 8 },
});

/**
 * All four lean-mass formulas side by side, with the spread between them.
 *
 * The spread is disagreement between formulas, not the error of any one of them.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { massKg, sex, statureCm } from '../body-fields.ts';
import { leanMass, leanMassFormulas } from './lean-mass.ts';

const ids = ['boer', 'james', 'hume', 'janmahasatian'] as const;

export const leanMassRangeRow = calculation({
  id: 'lean-mass-range',
  title: 'Lean mass by all four formulas',
  area: 'nutrition',
  input: [sex, massKg, statureCm],
  result: [
    { name: 'lowKg', unit: 'kg' },
    { name: 'highKg', unit: 'kg' },
    { name: 'byFormula', unit: 'kg', about: 'formula and leanMassKg of each that answered' },
    { name: 'leftOut', unit: '', about: 'formula and reason of each that refused' },
  ],
  citations: leanMassFormulas.map((formula) => formula.citation),
  calculate: (input) => {
    const outcomes = ids.map((formula) => ({ formula, outcome: leanMass({ ...input, formula }) }));
    const byFormula = outcomes.flatMap(({ formula, outcome }) =>
      outcome.ok ? [{ formula, leanMassKg: outcome.result.leanMassKg }] : [],
    );
    const leftOut = outcomes.flatMap(({ formula, outcome }) =>
      outcome.ok ? [] : outcome.refused.map((refusal) => ({ formula, reason: refusal.reason })),
    );
    if (byFormula.length === 0) {
      return {
        ok: false,
        refused: outcomes.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.refused)).slice(0, 1),
      };
    }
    const kilograms = byFormula.map((row) => row.leanMassKg);
    const notes = outcomes.flatMap(({ outcome }) => (outcome.ok ? outcome.notes : []));
    return answer(
      { lowKg: Math.min(...kilograms), highKg: Math.max(...kilograms), byFormula, leftOut },
      notes,
    );
  },
  example: { sex: 'female', massKg: 62, statureCm: 165 },
});

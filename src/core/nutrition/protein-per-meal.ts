/**
 * Protein at each meal, 0.4 to 0.55 g per kg body mass, and what that makes in a day.
 *
 * A suggestion from a review for healthy people who train. Four meals at the low end make 1.6 g/kg a day,
 * which is over the ceiling discussed in kidney disease: the same locks close it.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { massKg } from './body-fields.ts';
import { kidneyLockReasons } from './kidney-lock.ts';
import { egfrField, lockQuestions } from './lock-fields.ts';
import { lockCitations, lockNotes, otherLockReasons } from './nutrition-lock.ts';

const perMealGPerKg = { low: 0.4, high: 0.55 } as const;

/** Grams at one meal by body mass. */
export const proteinAtMeal = (mass: number): { readonly lowG: number; readonly highG: number } => ({
  lowG: perMealGPerKg.low * mass,
  highG: perMealGPerKg.high * mass,
});

export const proteinPerMealRow = calculation({
  id: 'protein-per-meal',
  title: 'Protein at each meal',
  area: 'nutrition',
  input: [massKg, { name: 'meals', kind: 'integer', unit: '1', min: 1, max: 8 }, egfrField, ...lockQuestions],
  result: [
    { name: 'lowGPerMeal', unit: 'g', about: 'null when locked' },
    { name: 'highGPerMeal', unit: 'g', about: 'null when locked' },
    { name: 'lowGPerDay', unit: 'g/d', about: 'null when locked' },
    { name: 'highGPerDay', unit: 'g/d', about: 'null when locked' },
    { name: 'locked', unit: '' },
    { name: 'lockReasons', unit: '' },
  ],
  citations: [
    {
      source: 'schoenfeld-aragon-2018',
      locator: '0.4 g/kg over at least four meals; up to 0.55',
      mark: 'seen',
    },
    ...lockCitations,
  ],
  calculate: (input) => {
    const lockReasons = [...kidneyLockReasons(input), ...otherLockReasons(input)];
    const locked = lockReasons.length > 0;
    const meal = proteinAtMeal(input.massKg);
    const low = locked ? null : meal.lowG;
    const high = locked ? null : meal.highG;
    return answer(
      {
        lowGPerMeal: low,
        highGPerMeal: high,
        lowGPerDay: low === null ? null : low * input.meals,
        highGPerDay: high === null ? null : high * input.meals,
        locked,
        lockReasons,
      },
      lockNotes(input, lockReasons),
    );
  },
  example: { massKg: 70, meals: 4 },
});

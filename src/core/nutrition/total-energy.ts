/**
 * Energy needed in a day: resting energy times an activity factor.
 *
 * The factors are common practice without a primary source. Sessions are already inside the factor and
 * are not added on top.
 */
import { calculation, units } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';

/** Common practice without a primary source. */
export const activityFactors = {
  sedentary: 1.2,
  light: 1.375,
  moderate: 1.55,
  hard: 1.725,
  'very-hard': 1.9,
} as const;

export type Activity = keyof typeof activityFactors;

export const totalEnergyKcal = (restingKcalPerDay: number, activity: Activity): number =>
  restingKcalPerDay * activityFactors[activity];

export const totalEnergyRow = calculation({
  id: 'total-energy',
  title: 'Energy needed in a day',
  area: 'nutrition',
  input: [
    { name: 'restingKcalPerDay', kind: 'number', unit: 'kcal/d', min: 300, max: 6000 },
    { name: 'activity', kind: 'enum', values: ['sedentary', 'light', 'moderate', 'hard', 'very-hard'] },
  ],
  result: units({ kcalPerDay: 'kcal/d', factor: '1' }),
  citations: [
    {
      source: 'activity-factors',
      locator: 'the five factors',
      mark: 'common-practice',
      remark: 'Seen on pages that give no primary source.',
    },
  ],
  calculate: (input) =>
    answer(
      {
        kcalPerDay: totalEnergyKcal(input.restingKcalPerDay, input.activity),
        factor: activityFactors[input.activity],
      },
      [
        {
          code: 'sessions-included',
          text: 'Training sessions are part of the factor; do not add them again.',
        },
      ],
    ),
  example: { restingKcalPerDay: 1245.25, activity: 'light' },
});

/**
 * Energy availability: what is left of the intake after exercise, per kg fat-free mass.
 *
 * Low availability harms bone, hormones and healing. The cut of 30 is from memory and debated; intake and
 * exercise energy are both reported with large error, so this is a prompt to ask and never a target.
 */
import { calculation, units } from '../calculations/calculation.ts';
import { answer } from '../outcome.ts';
import { leanMassKg } from './body-fields.ts';

const lowUnderKcalPerKg = 30;

export const energyAvailabilityRow = calculation({
  id: 'energy-availability',
  title: 'Energy availability',
  area: 'nutrition',
  input: [
    { name: 'intakeKcalPerDay', kind: 'number', unit: 'kcal/d', min: 0, max: 15000 },
    { name: 'exerciseKcalPerDay', kind: 'number', unit: 'kcal/d', min: 0, max: 10000 },
    leanMassKg,
  ],
  result: units({ kcalPerKgLeanPerDay: 'kcal/kg/d', low: '' }),
  citations: [
    { source: 'mountjoy-2018', locator: 'definition', mark: 'seen' },
    { source: 'mountjoy-2018', locator: 'cut of 30 kcal per kg fat-free mass a day', mark: 'memory' },
  ],
  calculate: (input) => {
    const available = (input.intakeKcalPerDay - input.exerciseKcalPerDay) / input.leanMassKg;
    return answer({ kcalPerKgLeanPerDay: available, low: available < lowUnderKcalPerKg }, [
      {
        code: 'from-memory',
        text: 'The cut of 30 is from memory. Both energies carry large error: a prompt to ask, not a target.',
      },
    ]);
  },
  example: { intakeKcalPerDay: 1800, exerciseKcalPerDay: 300, leanMassKg: 50 },
});

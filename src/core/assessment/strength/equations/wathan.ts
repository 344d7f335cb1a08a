/**
 * Wathan (Wathen): exponential, with a floor at 48.8 % of the maximum. A set at 30–48 % lies
 * outside it however long it runs.
 */
import { listedFormula, type RepetitionEquation } from './equation.ts';

const floor = 48.8;
const span = 53.8;
const rate = 0.075;

export const wathan: RepetitionEquation = {
  id: 'wathan',
  title: 'Wathan 1994',
  formula: '100 w / (48.8 + 53.8 e^(−0.075 r))',
  fromRepetitions: 1,
  toRepetitions: 15,
  factor: (repetitions) => 100 / (floor + span * Math.exp(-rate * repetitions)),
  repetitionsAt: (percent) => (percent > floor ? Math.log(span / (percent - floor)) / rate : null),
  floorPercent: floor,
  population: 'not stated where it was read',
  errorReported: null,
  citations: [listedFormula('wathan-1994', '1–15')],
};

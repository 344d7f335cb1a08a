/**
 * Mayhew and others: exponential, with a floor. However long the set, it never returns less than
 * 52.2 % of the maximum, so a set at 30–50 % lies outside it. Gives 1.089 w at one repetition.
 */
import { listedFormula, type RepetitionEquation } from './equation.ts';

const floor = 52.2;
const span = 41.9;
const rate = 0.055;

export const mayhew: RepetitionEquation = {
  id: 'mayhew',
  title: 'Mayhew and others 1992',
  formula: '100 w / (52.2 + 41.9 e^(−0.055 r))',
  fromRepetitions: 1,
  toRepetitions: 15,
  factor: (repetitions) => 100 / (floor + span * Math.exp(-rate * repetitions)),
  repetitionsAt: (percent) => (percent > floor ? Math.log(span / (percent - floor)) / rate : null),
  floorPercent: floor,
  population: 'college men and women, bench press',
  errorReported: null,
  citations: [listedFormula('mayhew-1992', '1–15')],
};

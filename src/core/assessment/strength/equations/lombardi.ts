/**
 * Lombardi: the tenth root of the repetitions. Flattens so early that 30 % of the maximum would
 * take 169,351 repetitions; of no meaning beyond ten.
 */
import { listedFormula, type RepetitionEquation } from './equation.ts';

export const lombardi: RepetitionEquation = {
  id: 'lombardi',
  title: 'Lombardi 1989',
  formula: 'w × r^0.10',
  fromRepetitions: 1,
  toRepetitions: 10,
  factor: (repetitions) => repetitions ** 0.1,
  repetitionsAt: (percent) => (100 / percent) ** 10,
  floorPercent: null,
  population: 'not stated where it was read',
  errorReported: null,
  citations: [listedFormula('lombardi-1989', '1–10')],
};

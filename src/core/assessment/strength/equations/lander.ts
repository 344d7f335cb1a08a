/**
 * Lander: a straight line in percent. It crosses zero at 37.9 repetitions, so a long set would give
 * any maximum one likes. Says nothing of sets beyond ten.
 */
import { groupOfSixCitation, groupOfSixError, listedFormula, type RepetitionEquation } from './equation.ts';

const intercept = 101.3;
const slope = 2.67123;

export const lander: RepetitionEquation = {
  id: 'lander',
  title: 'Lander 1985',
  formula: '100 w / (101.3 − 2.67123 r)',
  fromRepetitions: 1,
  toRepetitions: 10,
  factor: (repetitions) => 100 / (intercept - slope * repetitions),
  repetitionsAt: (percent) => (intercept - percent) / slope,
  floorPercent: null,
  population: 'not stated where it was read',
  errorReported: groupOfSixError,
  citations: [listedFormula('lander-1985', '1–10'), groupOfSixCitation],
};

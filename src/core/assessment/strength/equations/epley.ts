/**
 * Epley: the maximum rises by a thirtieth of the load per repetition. Gives 1.033 w for a single
 * repetition, which is itself the maximum, so it starts at two. Says nothing of sets beyond ten.
 */
import { groupOfSixCitation, groupOfSixError, listedFormula, type RepetitionEquation } from './equation.ts';

export const epley: RepetitionEquation = {
  id: 'epley',
  title: 'Epley 1985',
  formula: 'w × (1 + r / 30)',
  fromRepetitions: 2,
  toRepetitions: 10,
  factor: (repetitions) => 1 + repetitions / 30,
  repetitionsAt: (percent) => (30 * (100 - percent)) / percent,
  floorPercent: null,
  population: 'not stated where it was read',
  errorReported: groupOfSixError,
  citations: [listedFormula('epley-1985', '2–10'), groupOfSixCitation],
};

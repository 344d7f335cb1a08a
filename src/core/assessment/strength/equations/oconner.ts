/** O'Conner and others: a fortieth of the load per repetition. Says nothing of sets beyond ten. */
import { groupOfSixCitation, groupOfSixError, listedFormula, type RepetitionEquation } from './equation.ts';

export const oconner: RepetitionEquation = {
  id: 'oconner',
  title: "O'Conner and others 1989",
  formula: 'w × (1 + 0.025 r)',
  fromRepetitions: 1,
  toRepetitions: 10,
  factor: (repetitions) => 1 + 0.025 * repetitions,
  repetitionsAt: (percent) => (40 * (100 - percent)) / percent,
  floorPercent: null,
  population: 'not stated where it was read',
  errorReported: groupOfSixError,
  citations: [listedFormula('oconner-1989', '1–10'), groupOfSixCitation],
};

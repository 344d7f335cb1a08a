/**
 * Brzycki: 36 / (37 − r). The denominator is zero at 37 repetitions and small long before, so a
 * long set would give any maximum one likes. Says nothing of sets beyond ten.
 */
import { groupOfSixCitation, groupOfSixError, listedFormula, type RepetitionEquation } from './equation.ts';

export const brzycki: RepetitionEquation = {
  id: 'brzycki',
  title: 'Brzycki 1993',
  formula: 'w × 36 / (37 − r)',
  fromRepetitions: 1,
  toRepetitions: 10,
  factor: (repetitions) => 36 / (37 - repetitions),
  repetitionsAt: (percent) => 37 - (36 * percent) / 100,
  floorPercent: null,
  population: 'not stated where it was read',
  errorReported: groupOfSixError,
  citations: [listedFormula('brzycki-1993', '1–10'), groupOfSixCitation],
};

/**
 * Kemmler and others: a cubic fitted in trained women after the menopause, 3 to 20 repetitions on
 * four machines. The nearest published group to an older patient, and it gives the lowest maximum
 * of the eight wherever it is shown, so it errs to the lighter load. It turns down at 24.1.
 * Says nothing of untrained people, men or painful joints.
 */
import { type Cubic, cubicFactor, peakRepetitions, repetitionsForFactor } from './cubic.ts';
import type { RepetitionEquation } from './equation.ts';

export const kemmlerCubic: Cubic = {
  constant: 0.988,
  linear: 0.0104,
  quadratic: 0.0019,
  third: -0.0000584,
};

export const kemmler: RepetitionEquation = {
  id: 'kemmler',
  title: 'Kemmler and others 2006',
  formula: 'w × (0.988 + 0.0104 r + 0.00190 r² − 0.0000584 r³)',
  fromRepetitions: 3,
  toRepetitions: 20,
  factor: (repetitions) => cubicFactor(kemmlerCubic, repetitions),
  repetitionsAt: (percent) => repetitionsForFactor(kemmlerCubic, 100 / percent),
  floorPercent: 100 / cubicFactor(kemmlerCubic, peakRepetitions(kemmlerCubic)),
  population: '70 trained women after the menopause, 57.4 ± 3.1 years; four machine lifts',
  errorReported: 'mean absolute difference 1.5–3.1 %, coefficient of variation under 3.3 %',
  citations: [
    {
      source: 'kemmler-2006',
      locator: 'abstract; formula on the calculator page of the authors’ group',
      mark: 'seen',
      remark: 'Error did not depend on exercise or repetitions between 3 and 20.',
    },
  ],
};

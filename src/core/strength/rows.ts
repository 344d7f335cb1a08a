/** Every strength row of the registry, in the order it is listed. */
import type { AnyCalculation } from '../calculation.ts';
import { achievableLoadsRow } from './achievable-loads.ts';
import { doubleProgressionRow } from './double-progression.ts';
import { equationChoiceRow } from './equation-choice.ts';
import { exerciseCubicRow } from './exercise-cubics.ts';
import { fiveRepMaxRow } from './five-rep-max.ts';
import { fractionalSetsRow } from './fractional-sets.ts';
import { loadForPercentRow } from './load-for-percent.ts';
import { loadRoundingRow } from './load-rounding.ts';
import { loadStepRow } from './load-step.ts';
import { lowLoadDoseRow } from './low-load-dose.ts';
import { oneRepMaxRow } from './one-rep-max.ts';
import { oneRepMaxRangeRow } from './one-rep-max-range.ts';
import { percentForEffortRow } from './percent-for-effort.ts';
import { relativeIntensityRow } from './relative-intensity.ts';
import { percentForRepetitionsRow } from './repetition-percent-table.ts';
import { repetitionsAtPercentRow } from './repetitions-at-percent.ts';
import { reserveConfidenceRow } from './reserve-confidence.ts';
import { exertionFromReserveRow, reserveFromExertionRow } from './reserve-scale.ts';
import { sessionDensityRow } from './session-density.ts';
import { sessionLoadRow } from './session-load.ts';
import { smallestLoadForStepRow } from './smallest-load-for-step.ts';
import { trainingStrainRow } from './training-strain.ts';
import { twoForTwoRow } from './two-for-two.ts';
import { unitConversionRow } from './unit-conversion.ts';
import { volumeLoadRow } from './volume-load.ts';
import { weeklySetResponseRow } from './weekly-set-response.ts';

export const strengthRows: readonly AnyCalculation[] = [
  oneRepMaxRow,
  oneRepMaxRangeRow,
  equationChoiceRow,
  exerciseCubicRow,
  fiveRepMaxRow,
  repetitionsAtPercentRow,
  percentForRepetitionsRow,
  percentForEffortRow,
  reserveFromExertionRow,
  exertionFromReserveRow,
  reserveConfidenceRow,
  loadForPercentRow,
  loadRoundingRow,
  achievableLoadsRow,
  loadStepRow,
  smallestLoadForStepRow,
  doubleProgressionRow,
  twoForTwoRow,
  lowLoadDoseRow,
  volumeLoadRow,
  relativeIntensityRow,
  sessionDensityRow,
  fractionalSetsRow,
  weeklySetResponseRow,
  sessionLoadRow,
  trainingStrainRow,
  unitConversionRow,
];

/** Every strength row of the registry, in the order it is listed. */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import { achievableLoadsRow } from '#core/exercises/achievable-loads.ts';
import { doubleProgressionRow } from '#core/prescribing/low-load/double-progression.ts';
import { fractionalSetsRow } from '#core/prescribing/low-load/fractional-sets.ts';
import { loadForPercentRow } from '#core/prescribing/low-load/load-for-percent.ts';
import { loadRoundingRow } from '#core/prescribing/low-load/load-rounding.ts';
import { loadStepRow } from '#core/prescribing/low-load/load-step.ts';
import { lowLoadDoseRow } from '#core/prescribing/low-load/low-load-dose.ts';
import { smallestLoadForStepRow } from '#core/prescribing/low-load/smallest-load-for-step.ts';
import { twoForTwoRow } from '#core/prescribing/low-load/two-for-two.ts';
import { weeklySetResponseRow } from '#core/prescribing/low-load/weekly-set-response.ts';
import { relativeIntensityRow } from '#core/review/training-load/relative-intensity.ts';
import { sessionDensityRow } from '#core/review/training-load/session-density.ts';
import { sessionLoadRow } from '#core/review/training-load/session-load.ts';
import { trainingStrainRow } from '#core/review/training-load/training-strain.ts';
import { volumeLoadRow } from '#core/review/training-load/volume-load.ts';
import { unitConversionRow } from '#core/units/unit-conversion.ts';
import { equationChoiceRow } from './equation-choice.ts';
import { exerciseCubicRow } from './exercise-cubics.ts';
import { fiveRepMaxRow } from './five-rep-max.ts';
import { oneRepMaxRow } from './one-rep-max.ts';
import { oneRepMaxRangeRow } from './one-rep-max-range.ts';
import { percentForEffortRow } from './percent-for-effort.ts';
import { percentForRepetitionsRow } from './repetition-percent-table.ts';
import { repetitionsAtPercentRow } from './repetitions-at-percent.ts';
import { reserveConfidenceRow } from './reserve-confidence.ts';
import { exertionFromReserveRow, reserveFromExertionRow } from './reserve-scale.ts';

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

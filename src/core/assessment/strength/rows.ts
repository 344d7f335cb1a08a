/** Every strength row of the registry, in the order it is listed. */
import type { AnyCalculation } from '../../calculations/calculation.ts';
import { achievableLoadsRow } from '../../exercises/achievable-loads.ts';
import { doubleProgressionRow } from '../../prescribing/low-load/double-progression.ts';
import { fractionalSetsRow } from '../../prescribing/low-load/fractional-sets.ts';
import { loadForPercentRow } from '../../prescribing/low-load/load-for-percent.ts';
import { loadRoundingRow } from '../../prescribing/low-load/load-rounding.ts';
import { loadStepRow } from '../../prescribing/low-load/load-step.ts';
import { lowLoadDoseRow } from '../../prescribing/low-load/low-load-dose.ts';
import { smallestLoadForStepRow } from '../../prescribing/low-load/smallest-load-for-step.ts';
import { twoForTwoRow } from '../../prescribing/low-load/two-for-two.ts';
import { weeklySetResponseRow } from '../../prescribing/low-load/weekly-set-response.ts';
import { relativeIntensityRow } from '../../review/training-load/relative-intensity.ts';
import { sessionDensityRow } from '../../review/training-load/session-density.ts';
import { sessionLoadRow } from '../../review/training-load/session-load.ts';
import { trainingStrainRow } from '../../review/training-load/training-strain.ts';
import { volumeLoadRow } from '../../review/training-load/volume-load.ts';
import { unitConversionRow } from '../../units/unit-conversion.ts';
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

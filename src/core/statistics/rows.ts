/** Every calculation on a series of values: baseline, charts, trend, overlap, load beside pain. */
import type { AnyCalculation } from '../calculations/calculation.ts';
import { acuteAndChronicLoadRow } from '../review/training-load/acute-and-chronic-load.ts';
import { averageRunLengthRow } from './average-run-length.ts';
import { cusumChartRow } from './cusum-chart.ts';
import { diaryFalseAlarmsRow } from './diary-false-alarms.ts';
import { ewmaChartRow } from './ewma-chart.ts';
import { lagAssociationRow } from './lag-association.ts';
import { mannKendallRow } from './mann-kendall.ts';
import { mannKendallExactRow } from './mann-kendall-exact.ts';
import { nonoverlapAllPairsRow } from './nonoverlap-all-pairs.ts';
import { senSlopeRow } from './sen-slope.ts';
import { seriesBaselineRow } from './series-baseline.ts';
import { tauURow } from './tau-u.ts';

export const seriesRows: readonly AnyCalculation[] = [
  seriesBaselineRow,
  ewmaChartRow,
  cusumChartRow,
  averageRunLengthRow,
  diaryFalseAlarmsRow,
  mannKendallRow,
  mannKendallExactRow,
  senSlopeRow,
  nonoverlapAllPairsRow,
  tauURow,
  lagAssociationRow,
  acuteAndChronicLoadRow,
];

/** Everything the series of a review is read for, in the order it stands on the page. */
import type { ChoiceValues } from '../../clinic-choice.ts';
import type { PatientRecord } from '../../model/record.ts';
import type { ReviewSeries } from '../series.ts';
import { associationFinding } from './association.ts';
import { controlChartFinding } from './control-chart.ts';
import type { Finding } from './finding.ts';
import { levelChangeFinding } from './level-change.ts';
import { trendFinding } from './trend.ts';

export const findingsOf = (
  series: ReviewSeries,
  record: Pick<PatientRecord, 'planned' | 'baselines'>,
  choices?: ChoiceValues,
): readonly Finding[] => [
  associationFinding(series, record.planned, choices),
  trendFinding(series, choices),
  levelChangeFinding(series, choices),
  controlChartFinding(series, record.baselines, choices),
];

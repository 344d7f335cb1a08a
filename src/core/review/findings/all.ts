/** Everything the series of a review is read for, in the order it stands on the page. */
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { ReviewSeries } from '../series.ts';
import { associationFinding } from './association.ts';
import { controlChartFinding } from './control-chart.ts';
import { effusionTestFinding } from './effusion-test.ts';
import type { Finding } from './finding.ts';
import { levelChangeFinding } from './level-change.ts';
import { trendFinding } from './trend.ts';

export const findingsOf = (
  series: ReviewSeries,
  record: Pick<PatientRecord, 'planned' | 'baselines' | 'effusions'>,
  settings?: SettingValues,
): readonly Finding[] => {
  const effusionTest = effusionTestFinding(series, record.effusions, settings);
  return [
    ...(effusionTest ? [effusionTest] : []),
    associationFinding(series, record.planned, settings),
    trendFinding(series, settings),
    levelChangeFinding(series, settings),
    controlChartFinding(series, record.baselines, settings),
  ];
};

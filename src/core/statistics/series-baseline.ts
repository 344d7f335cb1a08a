/**
 * Mean and deviation of a baseline, to be set by a clinician.
 *
 * Needs at least 14 recorded values; days without a record do not count. The deviation has a floor of about one
 * rating's measurement error, so that a perfectly steady diary does not alarm at the first whole step.
 */
import { calculation } from '../calculations/calculation.ts';
import { answer, type Outcome, refuse } from '../outcome.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { meanOf, sampleDeviation } from './moments.ts';
import { daily } from './series-fields.ts';
import { seriesDefaults, seriesSettingOf } from './settings.ts';

export interface SeriesBaseline {
  readonly mean: number;
  readonly standardDeviation: number;
  /** The deviation charts use: never under the floor. */
  readonly sigma: number;
  readonly recorded: number;
}

const recordedOf = (values: readonly (number | null)[]): readonly number[] =>
  values.filter((value) => value !== null);

export const seriesBaseline = (
  values: readonly (number | null)[],
  settings: SettingValues = seriesDefaults,
): Outcome<SeriesBaseline> => {
  const recorded = recordedOf(values);
  const fewest = seriesSettingOf(settings, 'baseline-values-min');
  if (recorded.length < fewest) {
    return refuse(
      'values',
      'outside-validity',
      `Give at least ${fewest} recorded values; days without one do not count.`,
    );
  }
  const standardDeviation = sampleDeviation(recorded);
  const floor = seriesSettingOf(settings, 'baseline-deviation-floor');
  return answer({
    mean: meanOf(recorded),
    standardDeviation,
    sigma: Math.max(standardDeviation, floor),
    recorded: recorded.length,
  });
};

export const seriesBaselineRow = calculation({
  id: 'series-baseline',
  title: 'Baseline of a diary',
  area: 'series',
  input: [daily('values', 'One rating a day; null for a day without a record.')],
  result: [
    { name: 'mean', unit: '{score}' },
    { name: 'standardDeviation', unit: '{score}', about: 'with n − 1' },
    { name: 'sigma', unit: '{score}', about: 'the deviation, or the floor when that is larger' },
    { name: 'recorded', unit: '{value}' },
  ],
  citations: [
    { source: 'diary-chart-simulation', locator: 'false alarms by length of baseline', mark: 'computed' },
    {
      source: 'alghadir-2018',
      locator: 'standard error of one rating 0.48, reason of the floor',
      mark: 'seen',
    },
  ],
  calculate: (given) => seriesBaseline(given.values),
  example: { values: [3, 2, 3, 3, 2, 4, 3, 3, 2, 3, 3, 4, 2, 3] },
});

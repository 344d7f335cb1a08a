/**
 * A latched upward signal of a person's morning ratings against a frozen baseline.
 *
 * A one-sided cumulative sum whose deviation is inflated and has a floor, because diary scores are whole numbers
 * and neighbouring days resemble each other. Once set it stays until a clinician freezes a new baseline. Days
 * without a record are passed over, never read as zero. False alarms remain frequent: it may hold, nothing more.
 */
import { calculation } from '../calculation.ts';
import type { Citation } from '../citation.ts';
import type { ChoiceValues } from '../clinic-choice.ts';
import { answer, type Outcome } from '../outcome.ts';
import type { SeriesSource } from '../sources/series.ts';
import { seriesChoiceOf, seriesDefaults } from './choices.ts';
import { cusumChart } from './cusum-chart.ts';
import { recordedOf, seriesBaseline } from './series-baseline.ts';
import { daily } from './series-fields.ts';

const citations: readonly Citation<SeriesSource>[] = [
  { source: 'nist-cusum', locator: 'the sums', mark: 'second-hand' },
  { source: 'diary-simulation', locator: 'false alarms within 28 and 60 days', mark: 'computed' },
];

export interface SymptomSignal {
  readonly signal: boolean;
  /** Day of `days`, counted from 1, on which it was first set; null when it is not. */
  readonly firstAlarmDay: number | null;
  readonly sigma: number;
  readonly sums: readonly number[];
  readonly decisionInterval: number;
  readonly daysWithoutRecord: number;
}

/** The day, counted from 1, of the n-th recorded value. */
const dayOfRecorded = (days: readonly (number | null)[], place: number): number => {
  const recordedDays = days.flatMap((value, index) => (value === null ? [] : [index + 1]));
  return recordedDays[place - 1] as number;
};

export const symptomSignal = (
  baseline: readonly (number | null)[],
  days: readonly (number | null)[],
  choices: ChoiceValues = seriesDefaults,
): Outcome<SymptomSignal> => {
  const frozen = seriesBaseline(baseline, choices);
  if (!frozen.ok) {
    return { ok: false, refused: frozen.refused.map((refusal) => ({ ...refusal, field: 'input.baseline' })) };
  }
  const sigma = Math.max(
    seriesChoiceOf(choices, 'signal-deviation-floor'),
    frozen.result.standardDeviation * seriesChoiceOf(choices, 'signal-deviation-factor'),
  );
  const recorded = recordedOf(days);
  const decisionInterval = sigma * seriesChoiceOf(choices, 'signal-decision-interval');
  const chart = cusumChart({
    values: recorded,
    target: frozen.result.mean,
    allowance: sigma * seriesChoiceOf(choices, 'signal-allowance'),
    decisionInterval,
  });
  const first = chart.highAlarms[0];
  return answer({
    signal: first !== undefined,
    firstAlarmDay: first === undefined ? null : dayOfRecorded(days, first),
    sigma,
    sums: chart.high,
    decisionInterval,
    daysWithoutRecord: days.length - recorded.length,
  });
};

export const symptomSignalRow = calculation({
  id: 'symptom-signal',
  title: 'Upward signal of a diary',
  area: 'series',
  input: [
    daily('baseline', 'The frozen baseline; null for a day without a record.'),
    daily('days', 'The days since; null for a day without a record.'),
  ],
  result: [
    { name: 'signal', unit: '', about: 'latched: stays set after the first alarm' },
    { name: 'firstAlarmDay', unit: 'd' },
    { name: 'sigma', unit: '{score}' },
    { name: 'sums', unit: '{score}', about: 'one for each recorded day' },
    { name: 'decisionInterval', unit: '{score}' },
    { name: 'daysWithoutRecord', unit: 'd' },
  ],
  citations,
  calculate: (given) => symptomSignal(given.baseline, given.days),
  example: { baseline: [3, 2, 3, 3, 2, 4, 3, 3, 2, 3, 3, 4, 2, 3], days: [3, 4, null, 5, 5, 4, 6] },
});

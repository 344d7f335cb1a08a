/**
 * Tabular cumulative-sum chart, two-sided.
 *
 * Allowance and decision interval are in the unit of the data. An alarm is a sum strictly over the interval. The
 * run says for how many values the sum has been above zero: a shift began about that long ago. The chart never
 * restarts after an alarm: only a new baseline does that.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field } from '../calculations/describe.ts';
import { answer } from '../outcome.ts';
import { charted, sigma, target } from './series-fields.ts';

const input = [
  charted('values'),
  target,
  { ...sigma, about: 'Only to report allowance and interval in deviations; the sums do not use it.' },
  { name: 'allowance', kind: 'number', unit: '1', min: 0, max: 1e6 },
  { name: 'decisionInterval', kind: 'number', unit: '1', min: 0, max: 1e6, exclusiveMin: true },
] as const satisfies readonly Field[];

export interface CusumInput {
  readonly values: readonly number[];
  readonly target: number;
  readonly allowance: number;
  readonly decisionInterval: number;
}

interface Side {
  readonly sums: readonly number[];
  readonly runs: readonly number[];
}

const oneSide = (steps: readonly number[]): Side => {
  const sums: number[] = [];
  const runs: number[] = [];
  let sum = 0;
  let run = 0;
  for (const step of steps) {
    sum = Math.max(0, sum + step);
    run = sum > 0 ? run + 1 : 0;
    sums.push(sum);
    runs.push(run);
  }
  return { sums, runs };
};

const placesOver = (sums: readonly number[], interval: number): readonly number[] =>
  sums.flatMap((sum, place) => (sum > interval ? [place + 1] : []));

export const cusumChart = (given: CusumInput) => {
  const high = oneSide(given.values.map((value) => value - given.target - given.allowance));
  const low = oneSide(given.values.map((value) => given.target - given.allowance - value));
  const highAlarms = placesOver(high.sums, given.decisionInterval);
  const lowAlarms = placesOver(low.sums, given.decisionInterval);
  return {
    high: high.sums,
    low: low.sums,
    highRun: high.runs,
    lowRun: low.runs,
    alarms: [...new Set([...highAlarms, ...lowAlarms])].sort((a, b) => a - b),
    highAlarms,
    lowAlarms,
  };
};

export const cusumChartRow = calculation({
  id: 'cusum-chart',
  title: 'Cumulative-sum control chart',
  area: 'series',
  input,
  result: [
    { name: 'high', unit: '1' },
    { name: 'low', unit: '1' },
    { name: 'highRun', unit: '1', about: 'values since the high sum was last zero' },
    { name: 'lowRun', unit: '1', about: 'values since the low sum was last zero' },
    { name: 'alarms', unit: '1', about: 'places from 1, either direction' },
    { name: 'highAlarms', unit: '1' },
    { name: 'lowAlarms', unit: '1' },
    { name: 'allowanceInSigma', unit: '1' },
    { name: 'decisionIntervalInSigma', unit: '1' },
  ],
  citations: [
    { source: 'nist-cusum', locator: 'table of the worked example', mark: 'second-hand' },
    { source: 'montgomery', locator: 'CUSUM with allowance one half, interval 4 or 5', mark: 'seen' },
  ],
  calculate: (given) =>
    answer({
      ...cusumChart(given),
      allowanceInSigma: given.allowance / given.sigma,
      decisionIntervalInSigma: given.decisionInterval / given.sigma,
    }),
  example: {
    values: [3, 4, 4, 5, 5, 4, 6],
    target: 2.857143,
    sigma: 0.662994,
    allowance: 0.331497,
    decisionInterval: 3.31497,
  },
});

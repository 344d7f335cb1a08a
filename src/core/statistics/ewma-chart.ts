/**
 * Exponentially weighted moving average chart.
 *
 * Starts from the target; an alarm is a statistic strictly beyond its limit. Exact limits widen over the first
 * steps, asymptotic ones are constant. The chart never restarts by itself: only a new baseline does that.
 * False alarms are far more frequent on diary scores than the tables for independent normal values say.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { answer } from '../outcome.ts';
import { charted, sigma, target } from './series-fields.ts';

const input = [
  charted('values'),
  target,
  sigma,
  {
    name: 'lambda',
    kind: 'number',
    unit: '1',
    min: 0,
    max: 1,
    exclusiveMin: true,
    about: 'Weight of the newest value.',
  },
  {
    name: 'width',
    kind: 'number',
    unit: '1',
    min: 0,
    max: 10,
    exclusiveMin: true,
    about: 'Limit in deviations.',
  },
  { name: 'limits', kind: 'enum', values: ['exact', 'asymptotic'] },
] as const satisfies readonly Field[];
export type EwmaChartInput = InputOf<typeof input>;

export interface EwmaChart {
  readonly statistics: readonly number[];
  readonly upper: readonly number[];
  readonly lower: readonly number[];
  /** Places counted from 1, in either direction. */
  readonly alarms: readonly number[];
  readonly upperAlarms: readonly number[];
  readonly lowerAlarms: readonly number[];
}

const halfWidth = (given: EwmaChartInput, step: number): number => {
  const settled = given.lambda / (2 - given.lambda);
  const share = given.limits === 'exact' ? 1 - (1 - given.lambda) ** (2 * step) : 1;
  return given.width * given.sigma * Math.sqrt(settled * share);
};

export const ewmaChart = (given: EwmaChartInput): EwmaChart => {
  const statistics: number[] = [];
  let previous = given.target;
  for (const value of given.values) {
    previous = given.lambda * value + (1 - given.lambda) * previous;
    statistics.push(previous);
  }
  const widths = given.values.map((_, place) => halfWidth(given, place + 1));
  const upper = widths.map((width) => given.target + width);
  const lower = widths.map((width) => given.target - width);
  const places = given.values.map((_, place) => place + 1);
  const above = (place: number) => (statistics[place - 1] as number) > (upper[place - 1] as number);
  const below = (place: number) => (statistics[place - 1] as number) < (lower[place - 1] as number);
  return {
    statistics,
    upper,
    lower,
    alarms: places.filter((place) => above(place) || below(place)),
    upperAlarms: places.filter(above),
    lowerAlarms: places.filter(below),
  };
};

export const ewmaChartRow = calculation({
  id: 'ewma-chart',
  title: 'Moving-average control chart',
  area: 'series',
  input,
  result: [
    { name: 'statistics', unit: '1' },
    { name: 'upper', unit: '1' },
    { name: 'lower', unit: '1' },
    { name: 'alarms', unit: '1', about: 'places from 1, either direction' },
    { name: 'upperAlarms', unit: '1' },
    { name: 'lowerAlarms', unit: '1' },
  ],
  citations: [
    { source: 'nist-ewma', locator: 'data, statistics and limits of the example', mark: 'second-hand' },
    { source: 'montgomery', locator: 'EWMA example, weight 0.10 and width 2.7', mark: 'second-hand' },
  ],
  calculate: (given) => answer(ewmaChart(given)),
  example: {
    values: [52, 47, 53, 49.3, 50.1, 47],
    target: 50,
    sigma: 2.0539,
    lambda: 0.3,
    width: 3,
    limits: 'exact',
  },
});

import fc from 'fast-check';
import { sampleStandardDeviation, mean as simpleMean } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { cusumChart } from '#core/statistics/cusum-chart.ts';
import { ewmaChart } from '#core/statistics/ewma-chart.ts';
import { seriesBaseline } from '#core/statistics/series-baseline.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';
import { painBaseline, painDays } from './published-series.ts';

describe('a worked pain diary: 14 baseline mornings and the week after, computed', () => {
  const baseline = resultOf(seriesBaseline(painBaseline));

  it('mean 2.857143 and deviation 0.662994, with n − 1 [symptoms 19]', () => {
    near(baseline.mean, 2.857143, 1e-6);
    near(baseline.standardDeviation, 0.662994, 1e-6);
    near(baseline.sigma, 0.662994, 1e-6);
  });
  it('the sum first passes five deviations on day 4, with 5.1797 [symptoms 20]', () => {
    const { mean, sigma } = baseline;
    const chart = cusumChart({
      values: painDays,
      target: mean,
      allowance: sigma / 2,
      decisionInterval: 5 * sigma,
    });
    expect(chart.highAlarms[0]).toBe(4);
    near((chart.high[3] as number) / sigma, 5.1797, 1e-4);
  });
  it('the average first passes its exact limit on day 4, with 3.9227 over 3.6682 [symptoms 21]', () => {
    const { mean, sigma } = baseline;
    const chart = ewmaChart({
      values: painDays,
      target: mean,
      sigma,
      lambda: 0.3,
      width: 3,
      limits: 'exact',
    });
    expect(chart.upperAlarms[0]).toBe(4);
    near(chart.statistics[3], 3.9227, 1e-4);
    near(chart.upper[3], 3.6682, 1e-4);
  });
  it('a perfectly steady baseline is given the floor of 0.5, a choice of this project [symptoms 22]', () => {
    const steady = resultOf(seriesBaseline(new Array<number>(14).fill(3)));
    expect(steady).toEqual({ mean: 3, standardDeviation: 0, sigma: 0.5, recorded: 14 });
  });
});

describe('what a baseline needs', () => {
  it('13 recorded values are refused, 14 are enough, and days without a record do not count', () => {
    const days = (count: number) => Array.from({ length: count }, (_, day) => day % 4);
    expect(codesOf(seriesBaseline(days(13)))).toEqual(['input.values outside-validity']);
    expect(seriesBaseline(days(14)).ok).toBe(true);
    expect(seriesBaseline([...days(13), null, null]).ok).toBe(false);
    expect(resultOf(seriesBaseline([...days(14), null])).recorded).toBe(14);
  });
  it('a day without a record is never read as zero', () => {
    const days = new Array<number>(14).fill(5);
    expect(resultOf(seriesBaseline([null, ...days, null])).mean).toBe(5);
  });
  it('agrees with simple-statistics over generated diaries, floor apart', () => {
    holds(fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 14, maxLength: 60 }), (days) => {
      const baseline = resultOf(seriesBaseline(days));
      return (
        Math.abs(baseline.mean - simpleMean(days)) < 1e-12 &&
        Math.abs(baseline.standardDeviation - sampleStandardDeviation(days)) < 1e-12 &&
        baseline.sigma >= 0.5
      );
    });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ewmaChart } from '#core/statistics/ewma-chart.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';
import { montgomery, nistEwma, nistEwmaPrinted } from './published-series.ts';

const nist = { values: nistEwma, target: 50, sigma: 2.0539, lambda: 0.3, width: 3 } as const;

describe('moving-average chart, NIST/SEMATECH e-Handbook 6.3.2.4 (weight 0.3, width 3, deviation 2.0539)', () => {
  const exact = ewmaChart({ ...nist, limits: 'exact' });
  const settled = ewmaChart({ ...nist, limits: 'asymptotic' });

  it('first three statistics are 50.60, 49.52 and 50.564 [symptoms 1]', () => {
    near(exact.statistics[0], 50.6, 1e-9);
    near(exact.statistics[1], 49.52, 1e-9);
    near(exact.statistics[2], 50.564, 1e-9);
  });
  it('the twentieth is 51.988243, printed 51.99, and all agree with print to two decimals [symptoms 2]', () => {
    near(exact.statistics[19], 51.988243, 1e-6);
    for (const [place, printed] of nistEwmaPrinted.entries())
      near(exact.statistics[place], printed, 0.005 + 1e-9);
  });
  it('settled limits are 52.588432 and 47.411568, printed 52.5884 and 47.4115 [symptoms 3]', () => {
    near(settled.upper[0], 52.588432, 1e-6);
    near(settled.lower[0], 47.411568, 1e-6);
    near(settled.upper[19], 52.5884, 1e-4);
    near(settled.lower[19], 47.4115, 1e-4);
  });
  it('exact upper limits at 1, 2 and 5 are 51.848510, 52.256394 and 52.551611 [symptoms 4]', () => {
    near(exact.upper[0], 51.84851, 1e-6);
    near(exact.upper[1], 52.256394, 1e-6);
    near(exact.upper[4], 52.551611, 1e-6);
  });
  it('no point alarms with either limits [symptoms 5]', () => {
    expect([exact.alarms, settled.alarms]).toEqual([[], []]);
  });
});

describe('moving-average chart, by algebra and by Montgomery’s example', () => {
  it('the exact half-width at the first value is width × deviation × weight, whatever they are [symptoms 6]', () => {
    holds(
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 0.5, max: 4, noNaN: true }),
      fc.double({ min: 0.1, max: 3, noNaN: true }),
      (lambda, width, sigma) => {
        const chart = ewmaChart({ values: [0], target: 0, sigma, lambda, width, limits: 'exact' });
        return Math.abs((chart.upper[0] as number) - width * sigma * lambda) < 1e-12;
      },
    );
  });
  it('weight 0.1 and width 2.7 first alarm at 29 with 10.64682 over 10.6187 [symptoms 7]', () => {
    const chart = ewmaChart({
      values: montgomery,
      target: 10,
      sigma: 1,
      lambda: 0.1,
      width: 2.7,
      limits: 'exact',
    });
    expect(chart.alarms[0]).toBe(29);
    near(chart.statistics[28], 10.64682, 1e-5);
    near(chart.upper[28], 10.6187, 5e-5);
    near(chart.statistics[0], 9.945, 1e-9);
    near(chart.statistics[1], 9.7495, 1e-9);
    near(chart.statistics[2], 9.70355, 1e-9);
  });
  it('with a weight of 1 the statistics are the values themselves [symptoms 8]', () => {
    const chart = ewmaChart({
      values: montgomery,
      target: 10,
      sigma: 1,
      lambda: 1,
      width: 3,
      limits: 'exact',
    });
    expect(chart.statistics).toEqual([...montgomery]);
  });
  it('a statistic exactly at its limit is no alarm, just over it is; low ones count as well', () => {
    const at = (value: number) =>
      ewmaChart({ values: [value], target: 0, sigma: 1, lambda: 1, width: 2, limits: 'exact' });
    expect([1.9, 2, 2.1].map((value) => at(value).alarms)).toEqual([[], [], [1]]);
    expect(at(-2.1)).toMatchObject({ alarms: [1], upperAlarms: [], lowerAlarms: [1] });
  });
  it('an alarm does not restart the chart', () => {
    const chart = ewmaChart({
      values: [10, 10, 10],
      target: 0,
      sigma: 1,
      lambda: 0.5,
      width: 1,
      limits: 'exact',
    });
    expect(chart.statistics).toEqual([5, 7.5, 8.75]);
    expect(chart.alarms).toEqual([1, 2, 3]);
  });
});

describe('over generated diaries', () => {
  const values = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 60 });
  const design = fc.record({
    lambda: fc.double({ min: 0.01, max: 1, noNaN: true }),
    width: fc.double({ min: 0.5, max: 4, noNaN: true }),
    limits: fc.constantFrom('exact' as const, 'asymptotic' as const),
  });
  it('a worse day never lowers a later statistic, nor takes an upper alarm away', () => {
    holds(values, design, fc.nat(), fc.integer({ min: 1, max: 5 }), (days, chart, pick, rise) => {
      const place = pick % days.length;
      const worse = days.map((day, at) => (at === place ? day + rise : day));
      const of = (list: readonly number[]) => ewmaChart({ ...chart, values: list, target: 3, sigma: 1 });
      const before = of(days);
      const after = of(worse);
      return (
        after.statistics.every((value, at) => value >= (before.statistics[at] as number)) &&
        before.upperAlarms.every((alarm) => after.upperAlarms.includes(alarm))
      );
    });
  });
  it('exact limits never lie outside the settled ones', () => {
    holds(values, design, (days, chart) => {
      const exact = ewmaChart({ ...chart, limits: 'exact', values: days, target: 3, sigma: 1 });
      const settled = ewmaChart({ ...chart, limits: 'asymptotic', values: days, target: 3, sigma: 1 });
      return exact.upper.every((limit, at) => limit <= (settled.upper[at] as number));
    });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cusumChart, cusumChartRow } from '#core/statistics/cusum-chart.ts';
import { resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';
import { montgomery, nistCusum } from './published-series.ts';

describe('cumulative sums, NIST/SEMATECH e-Handbook 6.3.2.3 (target 325, allowance 0.3175, interval 4.1959)', () => {
  const chart = cusumChart({ values: nistCusum, target: 325, allowance: 0.3175, decisionInterval: 4.1959 });

  it('high sums at 13, 14 and 20 are 3.0075, 4.9400 and 19.0350 [symptoms 9]', () => {
    near(chart.high[12], 3.0075, 1e-9);
    near(chart.high[13], 4.94, 1e-9);
    near(chart.high[19], 19.035, 1e-9);
  });
  it('low sums at 7 and 8 are 0.5575 and 0.7150 [symptoms 10]', () => {
    near(chart.low[6], 0.5575, 1e-9);
    near(chart.low[7], 0.715, 1e-9);
  });
  it('groups 14 to 20 alarm, without a restart [symptoms 11]', () => {
    expect(chart.alarms).toEqual([14, 15, 16, 17, 18, 19, 20]);
    expect(chart.lowAlarms).toEqual([]);
  });
  it('the same in deviations, allowance one half and interval 4.1959/0.635 [symptoms 12]', () => {
    const standard = nistCusum.map((value) => (value - 325) / 0.635);
    const scaled = cusumChart({
      values: standard,
      target: 0,
      allowance: 0.5,
      decisionInterval: 4.1959 / 0.635,
    });
    expect(scaled.alarms).toEqual([14, 15, 16, 17, 18, 19, 20]);
    const row = resultOf(
      cusumChartRow.calculate({
        values: nistCusum,
        target: 325,
        sigma: 0.635,
        allowance: 0.3175,
        decisionInterval: 4.1959,
      }),
    );
    near(row.allowanceInSigma, 0.5, 1e-12);
    near(row.decisionIntervalInSigma, 6.6077165, 1e-6);
  });
});

describe('cumulative sums, Montgomery’s example (mean 10, deviation 1, allowance one half)', () => {
  const of = (decisionInterval: number) =>
    cusumChart({ values: montgomery, target: 10, allowance: 0.5, decisionInterval });
  it('interval 5: first alarm at 29 with 5.28, seven values after the sum was last zero [symptoms 13]', () => {
    expect(of(5).alarms[0]).toBe(29);
    near(of(5).high[28], 5.28, 1e-9);
    expect(of(5).highRun[28]).toBe(7);
    near(of(5).high[29], 5.3, 1e-9);
    expect(of(5).highRun[29]).toBe(8);
  });
  it('interval 4: first alarm at 28 with 4.47, six values after the sum was last zero [symptoms 14]', () => {
    expect(of(4).alarms[0]).toBe(28);
    near(of(4).high[27], 4.47, 1e-9);
    expect(of(4).highRun[27]).toBe(6);
  });
  it('a sum exactly at the interval is no alarm, over it is', () => {
    const at = (value: number) =>
      cusumChart({ values: [value], target: 0, allowance: 1, decisionInterval: 4 }).alarms;
    expect([4.9, 5, 5.1].map(at)).toEqual([[], [], [1]]);
  });
  it('a fall alarms on the low side only, and is in the common list', () => {
    const chart = cusumChart({ values: [-5, -5], target: 0, allowance: 0.5, decisionInterval: 4 });
    expect(chart).toMatchObject({ alarms: [1, 2], highAlarms: [], lowAlarms: [1, 2], lowRun: [1, 2] });
  });
});

describe('over generated diaries', () => {
  const values = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 60 });
  it('a worse day never lowers a later high sum, nor takes a high alarm away', () => {
    holds(values, fc.nat(), fc.integer({ min: 1, max: 5 }), (days, pick, rise) => {
      const place = pick % days.length;
      const of = (list: readonly number[]) =>
        cusumChart({ values: list, target: 3, allowance: 0.5, decisionInterval: 5 });
      const before = of(days);
      const after = of(days.map((day, at) => (at === place ? day + rise : day)));
      return (
        after.high.every((sum, at) => sum >= (before.high[at] as number)) &&
        before.highAlarms.every((alarm) => after.highAlarms.includes(alarm))
      );
    });
  });
  it('a diary in another unit gives the same alarms when target, allowance and interval are in that unit', () => {
    holds(values, fc.constantFrom(2, 4, 8, 0.5), (days, unit) => {
      const of = (scale: number) =>
        cusumChart({
          values: days.map((day) => day * scale),
          target: 3 * scale,
          allowance: 0.5 * scale,
          decisionInterval: 5 * scale,
        }).alarms.join();
      return of(1) === of(unit);
    });
  });
  it('upside down, high and low sums change places', () => {
    holds(values, (days) => {
      const of = (list: readonly number[]) =>
        cusumChart({ values: list, target: 0, allowance: 0.5, decisionInterval: 5 });
      return of(days).high.join() === of(days.map((day) => 0 - day)).low.join();
    });
  });
});

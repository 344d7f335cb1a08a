import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mannKendall, mannKendallRow } from '#core/statistics/mann-kendall.ts';
import { mannKendallExactRow, mannKendallExactTail } from '#core/statistics/mann-kendall-exact.ts';
import { normalUpperTail } from '#core/statistics/normal-tail.ts';
import { senSlope } from '#core/statistics/sen-slope.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';
import { holyCross, risingPain } from './published-series.ts';

/** Neither library brings types. */
const load = createRequire(import.meta.url);
const { jStat } = load('jstat') as {
  jStat: { normal: { cdf(x: number, mean: number, deviation: number): number } };
};
const { TheilSenRegression } = load('ml-regression-theil-sen') as {
  TheilSenRegression: new (x: readonly number[], y: readonly number[]) => { slope: number };
};

describe('trend by hand, College of the Holy Cross, 14 values', () => {
  const trend = mannKendall(holyCross);
  it('S 54, variance 332.666667 and Z 2.905837; 72 pairs up, 18 down, 1 tied [symptoms 23]', () => {
    expect(trend).toMatchObject({ s: 54, pairsUp: 72, pairsDown: 18, pairsTied: 1 });
    near(trend.variance, 332.666667, 1e-6);
    near(trend.z, 2.905837, 1e-6);
  });
  it('p is .00366272 two-sided and .00183136 one-sided, as R and jstat give [symptoms 24]', () => {
    near(trend.pTwoSided, 0.00366272, 1e-8);
    near(trend.pTwoSided / 2, 0.00183136, 1e-8);
  });
  it('slope .5666667 and tau-b .5966942, as scipy and R give [symptoms 25]', () => {
    near(resultOf(senSlope(holyCross)).slope, 0.5666667, 1e-7);
    near(trend.tauB, 0.5966942, 1e-7);
    near(resultOf(senSlope(holyCross)).intercept, 11.966667, 1e-6);
  });
});

describe('trend of small and of plain series, computed', () => {
  it('a rising pain diary: S 64, variance 318, Z 3.532865, slope one third a day [symptoms 26]', () => {
    const trend = mannKendall(risingPain);
    expect(trend.s).toBe(64);
    near(trend.variance, 318, 1e-6);
    near(trend.z, 3.532865, 1e-6);
    near(trend.pTwoSided, 0.000411, 5e-7);
    near(trend.tauB, 0.759647, 1e-6);
    near(resultOf(senSlope(risingPain)).slope, 0.333333, 1e-6);
  });
  it('eight equal values: S 0, Z 0, slope 0, and no error [symptoms 27]', () => {
    const flat = new Array<number>(8).fill(4);
    expect(mannKendall(flat)).toMatchObject({ s: 0, variance: 0, z: 0, pTwoSided: 1, tauB: null });
    expect(resultOf(senSlope(flat)).slope).toBe(0);
  });
  it('exact chances: five values S 10 .008333, eight S 16 .03051, ten S 23 .02331 [symptoms 28]', () => {
    near(mannKendallExactTail(5, 10), 0.008333, 5e-6);
    near(mannKendallExactTail(8, 16), 0.03051, 5e-6);
    near(mannKendallExactTail(10, 23), 0.02331, 5e-6);
  });
  it('three values or fewer can never reach 0.05, four can', () => {
    const row = (values: readonly number[]) => resultOf(mannKendallExactRow.calculate({ values }));
    expect(row([1, 2]).pOneSided).toBeCloseTo(1 / 2, 12);
    expect(row([1, 2, 3]).pOneSided).toBeCloseTo(1 / 6, 12);
    expect(row([1, 2, 3, 4]).pOneSided).toBeCloseTo(1 / 24, 12);
  });
  it('a tie is refused by the exact test, never broken', () => {
    expect(codesOf(mannKendallExactRow.calculate({ values: [1, 2, 2, 3] }))).toEqual([
      'input.values outside-validity',
    ]);
  });
  it('ten values or fewer without ties are pointed to the exact test; with ties or more they are not', () => {
    const codes = (values: readonly number[]) => codesOf(mannKendallRow.calculate({ values }));
    expect(codes([1, 3, 2, 4, 5, 6, 7, 9, 8, 10])).toContain('use-exact');
    expect(codes([1, 3, 2, 4, 5, 6, 7, 9, 8, 10, 11])).not.toContain('use-exact');
    expect(codes([1, 1, 2])).not.toContain('use-exact');
  });
});

describe('slope with real day numbers', () => {
  it('a missing day changes the slope: 0, 1 and 4 on days 0, 1 and 4 rise by one a day', () => {
    expect(resultOf(senSlope([0, 1, 4], [0, 1, 4])).slope).toBe(1);
    expect(resultOf(senSlope([0, 1, 4])).slope).toBe(2);
  });
  it('two ratings on one day make no pair', () => {
    expect(resultOf(senSlope([1, 9, 2], [0, 0, 1]))).toMatchObject({ pairs: 2, slope: -3 });
  });
  it('unequal lengths, one time only, or times too near to each other are refused', () => {
    expect(codesOf(senSlope([1, 2], [0]))).toEqual(['input.times inconsistent']);
    expect(codesOf(senSlope([1, 2], [3, 3]))).toEqual(['input.times outside-validity']);
    expect(codesOf(senSlope([1, 2, 3], [0, 1e-300, 1]))).toEqual(['input.times outside-validity']);
  });
});

const series = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 2, maxLength: 30 });

describe('over generated series', () => {
  it('the normal tail agrees with jstat', () => {
    holds(fc.double({ min: -8, max: 8, noNaN: true }), (z) => {
      return Math.abs(normalUpperTail(z) - (1 - jStat.normal.cdf(z, 0, 1))) < 1e-12;
    });
  });
  // That library takes the lower of the two middle slopes where there are two; upside down it takes the upper.
  it('the slope agrees with ml-regression-theil-sen, its lower and its upper middle slope taken together', () => {
    const theirs = (values: readonly number[]) =>
      new TheilSenRegression(
        values.map((_, day) => day),
        values,
      ).slope;
    holds(series, (values) => {
      const both = (theirs(values) - theirs(values.map((value) => -value))) / 2;
      return Math.abs(both - resultOf(senSlope(values)).slope) < 1e-12;
    });
  });
  it('turned round in time or upside down, S changes its sign and p stays', () => {
    holds(series, (values) => {
      const here = mannKendall(values);
      const back = mannKendall([...values].reverse());
      const down = mannKendall(values.map((value) => 10 - value));
      return (
        here.s + back.s === 0 &&
        here.s + down.s === 0 &&
        here.pTwoSided === back.pTwoSided &&
        here.pTwoSided > 0 &&
        here.pTwoSided <= 1
      );
    });
  });
  it('any rising rescaling of the ratings leaves the test as it was, and scales the slope', () => {
    holds(series, fc.constantFrom(2, 4, 0.5), (values, scale) => {
      const scaled = values.map((value) => value * scale + 7);
      return (
        mannKendall(values).z === mannKendall(scaled).z &&
        Math.abs(resultOf(senSlope(scaled)).slope - scale * resultOf(senSlope(values)).slope) < 1e-12
      );
    });
  });
  it('exact chances fall as S grows, start at one and are symmetric about the middle', () => {
    for (let count = 2; count <= 30; count += 1) {
      const pairs = (count * (count - 1)) / 2;
      let before = 1 + 1e-12;
      for (let s = pairs % 2; s <= pairs; s += 2) {
        const chance = mannKendallExactTail(count, s);
        expect(chance).toBeLessThan(before);
        expect(chance).toBe(mannKendallExactTail(count, -s));
        before = chance;
      }
    }
  });
  it('exact chances are those of counting every order of up to six values', () => {
    const orders = (values: readonly number[]): readonly (readonly number[])[] =>
      values.length < 2
        ? [values]
        : values.flatMap((value) =>
            orders(values.filter((other) => other !== value)).map((rest) => [value, ...rest]),
          );
    for (let count = 2; count <= 6; count += 1) {
      const all = orders(Array.from({ length: count }, (_, at) => at)).map((order) => mannKendall(order).s);
      for (const s of new Set(all.filter((value) => value >= 0))) {
        const share = all.filter((value) => value >= s).length / all.length;
        expect(mannKendallExactTail(count, s)).toBeCloseTo(share, 12);
      }
    }
  });
});

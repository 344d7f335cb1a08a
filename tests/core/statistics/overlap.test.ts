import fc from 'fast-check';
import { wilcoxonRankSum } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { nonoverlapAllPairs } from '#core/statistics/nonoverlap-all-pairs.ts';
import { tauU } from '#core/statistics/tau-u.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';

describe('nonoverlap of all pairs', () => {
  it('Parker and Vannest 2009: 104 up, 2 down, 4 tied of 110 is .9636364 [symptoms 29]', () => {
    const overlap = nonoverlapAllPairs([4, 3, 4, 3, 4, 7, 5, 2, 3, 2], [5, 9, 7, 9, 7, 5, 9, 11, 11, 10, 9]);
    expect(overlap).toMatchObject({ pairsUp: 104, pairsDown: 2, pairsTied: 4 });
    near(overlap.nap, 0.9636364, 1e-7);
  });
  it('Parker, Vannest and Davis 2011: .9166667 and Tau .8333333 [symptoms 30]', () => {
    const before = [20, 20, 26, 25, 22, 23];
    const after = [28, 25, 24, 27, 30, 30, 29];
    near(nonoverlapAllPairs(before, after).nap, 0.9166667, 1e-7);
    near(nonoverlapAllPairs(before, after).tau, 0.8333333, 1e-7);
    near(tauU(before, after, 'less-trend-before').tauU, 31 / 42, 1e-12);
  });
});

describe('Tau-U, with the formula named', () => {
  const of = (before: readonly number[], after: readonly number[], form: Parameters<typeof tauU>[2]) =>
    tauU(before, after, form);
  it('Parker and others 2011, first example: S 16, .80; .65; 23/30; full 20/36 [symptoms 31]', () => {
    const phases = [
      [2, 3, 5, 3],
      [4, 5, 5, 7, 6],
    ] as const;
    expect(of(...phases, 'between').numerator).toBe(16);
    near(of(...phases, 'between').tauU, 0.8, 1e-12);
    near(of(...phases, 'less-trend-before').tauU, 0.65, 1e-12);
    near(of(...phases, 'with-trend-after').tauU, 23 / 30, 1e-12);
    near(of(...phases, 'full').tauU, 20 / 36, 1e-12);
  });
  it('second example: .80, and .55 less the trend before [symptoms 32]', () => {
    near(of([3, 3, 4, 5], [4, 5, 6, 7, 7], 'between').tauU, 0.8, 1e-12);
    near(of([3, 3, 4, 5], [4, 5, 6, 7, 7], 'less-trend-before').tauU, 0.55, 1e-12);
  });
  it('Tarlow 2017: 1 to 5 before 6 to 10 is 1, and .6 less the trend before [symptoms 33]', () => {
    near(of([1, 2, 3, 4, 5], [6, 7, 8, 9, 10], 'between').tauU, 1, 1e-12);
    near(of([1, 2, 3, 4, 5], [6, 7, 8, 9, 10], 'less-trend-before').tauU, 0.6, 1e-12);
  });
  it('each form names its own formula', () => {
    const forms = ['between', 'less-trend-before', 'with-trend-after', 'full'] as const;
    expect(new Set(forms.map((form) => of([1, 2], [2, 3], form).formula)).size).toBe(4);
  });
});

const phase = fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 20 });

describe('over generated phases', () => {
  it('the phases exchanged, the two shares add up to one [symptoms 34]', () => {
    holds(phase, phase, (before, after) => {
      const sum = nonoverlapAllPairs(before, after).nap + nonoverlapAllPairs(after, before).nap;
      return Math.abs(sum - 1) < 1e-12;
    });
  });
  it('agrees with the rank sum of simple-statistics', () => {
    holds(phase, phase, (before, after) => {
      const ranks = wilcoxonRankSum(after, before) - (after.length * (after.length + 1)) / 2;
      return Math.abs(ranks / (before.length * after.length) - nonoverlapAllPairs(before, after).nap) < 1e-12;
    });
  });
  it('a worse day after never lowers the share, and the order of days does not matter to it', () => {
    holds(phase, phase, fc.nat(), (before, after, pick) => {
      const worse = after.map((day, at) => (at === pick % after.length ? day + 1 : day));
      const here = nonoverlapAllPairs(before, after).nap;
      return (
        nonoverlapAllPairs(before, worse).nap >= here &&
        nonoverlapAllPairs([...before].reverse(), [...after].reverse()).nap === here
      );
    });
  });
});

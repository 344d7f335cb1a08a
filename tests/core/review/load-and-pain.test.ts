import fc from 'fast-check';
import { sampleCorrelation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  acuteAndChronicLoadRow,
  loadLine,
  loadWeight,
} from '#core/review/training-load/acute-and-chronic-load.ts';
import { lagAssociation, lagBand } from '#core/statistics/lag-association.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from '#tests/core/nutrition/near.ts';
import { holds } from '#tests/support/holds.ts';
import { loadDays, painOfLoadDays } from '../statistics/published-series.ts';

/** The other convention, as R's ccf has it: common means and all days under the line. */
const commonMeanCorrelation = (load: readonly number[], pain: readonly number[], lag: number): number => {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [meanLoad, meanPain] = [mean(load), mean(pain)];
  const squares = (values: readonly number[], about: number) =>
    values.reduce((sum, value) => sum + (value - about) ** 2, 0);
  const cross = load
    .slice(0, load.length - lag)
    .reduce((sum, value, day) => sum + (value - meanLoad) * ((pain[day + lag] as number) - meanPain), 0);
  return cross / Math.sqrt(squares(load, meanLoad) * squares(pain, meanPain));
};

describe('load beside the pain of the next days, a worked diary of 28 days', () => {
  const result = resultOf(lagAssociation(loadDays, painOfLoadDays));

  it('correlations at 0, 1, 2 and 3 days are .025857, −.140419, .494564 and −.058069, as R gives by pairs [symptoms 35]', () => {
    const expected = [0.025857, -0.140419, 0.494564, -0.058069];
    for (const [lag, value] of expected.entries()) near(result.byLag[lag]?.correlation, value, 1e-6);
    expect(result.byLag.map((row) => row.pairs)).toEqual([28, 27, 26, 25]);
  });
  it('R’s ccf gives .456336 at two days; ours is the pairwise figure and not that one [symptoms 36]', () => {
    near(commonMeanCorrelation(loadDays, painOfLoadDays, 2), 0.456336, 1e-6);
    expect(Math.abs((result.byLag[2]?.correlation as number) - 0.456336)).toBeGreaterThan(0.01);
  });
  it('the day-to-day correlation of alternating training days is −.668', () =>
    near(result.loadDayToDay, -0.668, 5e-4));
  it('the null band is the published one for three lags, and wider for days alike', () => {
    near(lagBand(14, 0), 0.64, 5e-4);
    near(lagBand(28, 0), 0.452, 5e-4);
    near(lagBand(56, 0), 0.32, 5e-4);
    near(lagBand(28, 0.25), 0.584, 5e-4);
    near(lagBand(28, -0.5), 0.452, 5e-4);
  });
  it('is said to be no proof of cause', () => {
    expect(codesOf(lagAssociation(loadDays, painOfLoadDays))).toEqual(['not-cause']);
  });
  it('27 days with both recorded are refused, 28 are answered; an unrecorded day does not count', () => {
    expect(codesOf(lagAssociation(loadDays.slice(1), painOfLoadDays.slice(1)))).toEqual([
      'input.pain outside-validity',
    ]);
    const gap = painOfLoadDays.map((pain, day) => (day === 5 ? null : pain));
    expect(codesOf(lagAssociation(loadDays, gap))).toEqual(['input.pain outside-validity']);
    expect(lagAssociation([...loadDays, 0], [...gap, 5]).ok).toBe(true);
  });
  it('pain that never changes has no correlation, and no error', () => {
    const flat = resultOf(lagAssociation(loadDays, new Array<number>(28).fill(3)));
    expect(flat.byLag.map((row) => [row.correlation, row.outsideBand])).toEqual(
      new Array(4).fill([null, null]),
    );
  });
  it('different numbers of days are refused', () => {
    expect(codesOf(lagAssociation(loadDays, painOfLoadDays.slice(1)))).toEqual(['input.pain inconsistent']);
  });
});

describe('acute and chronic load, a picture', () => {
  const of = (loads: readonly (number | null)[]) =>
    resultOf(acuteAndChronicLoadRow.calculate({ loads, acuteDays: 7, chronicDays: 28 }));

  it('weights for 7 and 28 days are .25 and .0689655 (Williams 2017) [symptoms 40]', () => {
    near(loadWeight(7), 0.25, 1e-7);
    near(loadWeight(28), 0.0689655, 1e-7);
  });
  it('28 days at 100 and 7 at 200 give 186.651611 and 139.359836, computed [symptoms 41]', () => {
    const picture = of([...new Array<number>(28).fill(100), ...new Array<number>(7).fill(200)]);
    near(picture.acute.at(-1), 186.651611, 1e-6);
    near(picture.chronic.at(-1), 139.359836, 1e-6);
  });
  it('a fortnight with rest days gives 43.1454 and 69.1426, computed [symptoms 42]', () => {
    const picture = of([100, 0, 120, 0, 130, 0, 0, 110, 0, 140, 0, 150, 0, 0]);
    near(picture.acute.at(-1), 43.1454, 1e-4);
    near(picture.chronic.at(-1), 69.1426, 1e-4);
  });
  it('a day without a record has no point and is not a rest day', () => {
    const picture = of([100, null, 100]);
    expect(picture.acute).toEqual([100, null, 100]);
    expect(of([100, 0, 100]).acute[2]).toBe(81.25);
    expect(picture.daysWithoutRecord).toBe(1);
  });
  it('gives no ratio and no verdict', () => {
    expect(Object.keys(of([100])).filter((key) => /ratio|risk|verdict|zone|band/i.test(key))).toEqual([]);
    expect(
      codesOf(acuteAndChronicLoadRow.calculate({ loads: [1], acuteDays: 7, chronicDays: 28 })),
    ).toContain('picture-only');
  });
});

const diary = fc.integer({ min: 28, max: 50 }).chain((days) =>
  fc.record({
    load: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: days, maxLength: days }),
    pain: fc.array(fc.integer({ min: 0, max: 10 }), { minLength: days, maxLength: days }),
  }),
);

describe('over generated diaries', () => {
  it('each correlation agrees with simple-statistics on the shifted days', () => {
    holds(diary, ({ load, pain }) =>
      resultOf(lagAssociation(load, pain)).byLag.every((row) => {
        if (row.correlation === null) return true;
        const theirs = sampleCorrelation(load.slice(0, load.length - row.lagDays), pain.slice(row.lagDays));
        return Math.abs(theirs - row.correlation) < 1e-9;
      }),
    );
  });
  it('a line of loads stays between the least and the largest load, and scales with them', () => {
    holds(
      fc.array(fc.option(fc.integer({ min: 0, max: 500 }), { freq: 4 }), { minLength: 1, maxLength: 60 }),
      fc.integer({ min: 2, max: 84 }),
      (loads, days) => {
        const known = loads.filter((load) => load !== null);
        const line = loadLine(loads, days);
        const twice = loadLine(
          loads.map((load) => (load === null ? null : 2 * load)),
          days,
        );
        return line.every((point, day) => {
          if (point === null) return loads[day] === null && twice[day] === null;
          const inside = point >= Math.min(...known) - 1e-9 && point <= Math.max(...known) + 1e-9;
          return inside && Math.abs((twice[day] as number) - 2 * point) < 1e-9;
        });
      },
    );
  });
});

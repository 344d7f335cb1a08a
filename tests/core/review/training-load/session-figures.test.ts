import fc from 'fast-check';
import { mean, sampleStandardDeviation, standardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { fractionalSets } from '#core/prescribing/low-load/fractional-sets.ts';
import { weeklySetResponse } from '#core/prescribing/low-load/weekly-set-response.ts';
import { relativeIntensity } from '#core/review/training-load/relative-intensity.ts';
import { sessionDensity } from '#core/review/training-load/session-density.ts';
import { sessionLoad } from '#core/review/training-load/session-load.ts';
import { monotony, trainingStrain } from '#core/review/training-load/training-strain.ts';
import { volumeLoad } from '#core/review/training-load/volume-load.ts';
import { holds } from '#tests/support/holds.ts';
import { codesOf, resultOf } from '../../assessment/strength/result-of.ts';

const sets = (...pairs: readonly (readonly [number | null, number | null])[]) => ({
  sets: pairs.map(([repetitions, loadKg]) => ({ repetitions, loadKg })),
});

describe('volume of a session (BMJ Military Health table 1)', () => {
  it('3 × 8 × 65 kg is 1560 kg; 10 × 55 + 8 × 65 + 6 × 75 is 1520 kg [strength 32] [strength 33]', () => {
    expect(resultOf(volumeLoad(sets([8, 65], [8, 65], [8, 65]))).volumeLoadKg).toBe(1560);
    expect(resultOf(volumeLoad(sets([10, 55], [8, 65], [6, 75]))).volumeLoadKg).toBe(1520);
  });

  it('1520 kg over 24 repetitions is 63.33 kg, 57.58 % of 110 kg [strength 34] [strength 35]', () => {
    const { meanLoadKg } = resultOf(volumeLoad(sets([10, 55], [8, 65], [6, 75])));
    expect(meanLoadKg).toBeCloseTo(63.33, 2);
    const { percent } = resultOf(relativeIntensity({ meanLoadKg: meanLoadKg ?? 0, oneRepMaxKg: 110 }));
    expect(Math.abs(percent - 57.58)).toBeLessThanOrEqual(0.01);
  });

  it('1560 kg in 45 minutes is 34.67 kg a minute [strength 36]', () => {
    const { kgPerMinute } = resultOf(sessionDensity({ volumeLoadKg: 1560, minutes: 45 }));
    expect(Math.abs(kgPerMinute - 34.67)).toBeLessThanOrEqual(0.01);
  });

  it('a set without its count or load makes the sum unknown, never smaller', () => {
    for (const incomplete of [sets([8, 65], [null, 65]), sets([8, null])]) {
      const outcome = volumeLoad(incomplete);
      expect(resultOf(outcome)).toEqual({ volumeLoadKg: null, repetitions: null, meanLoadKg: null });
      expect(codesOf(outcome)).toEqual(['missing']);
    }
  });

  it('no repetition done has no mean load', () => {
    expect(resultOf(volumeLoad(sets([0, 10])))).toEqual({
      volumeLoadKg: 0,
      repetitions: 0,
      meanLoadKg: null,
    });
  });
});

describe('weekly sets', () => {
  it('one more weekly set is 0.37 % on average, effect 0.023 (Schoenfeld 2017) [strength 51]', () => {
    expect(resultOf(weeklySetResponse({ additionalWeeklySets: 1 }))).toEqual({
      gainPercent: 0.37,
      effectSize: 0.023,
    });
  });

  it('6 direct and 4 indirect sets count as 8 (Pelland 2024) [strength 52]', () => {
    expect(resultOf(fractionalSets({ directSets: 6, indirectSets: 4 })).weeklySets).toBe(8);
  });
});

const strain = (...dailyLoads: number[]) => resultOf(trainingStrain({ dailyLoads }));

describe('session load and weekly strain (Foster)', () => {
  it('exertion 7 over 75 minutes is 525 [strength 37]', () => {
    expect(resultOf(sessionLoad({ exertion: 7, minutes: 75 })).load).toBe(525);
  });

  it('a week of 200, 0, 210, 0, 225, 60, 0 with both standard deviations [strength 38] [strength 39] [strength 40] [strength 41]', () => {
    const week = strain(200, 0, 210, 0, 225, 60, 0);
    expect(week.weekly).toBe(695);
    expect(Math.abs((week.sampleMonotony ?? 0) - 0.9237)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs((week.monotony ?? 0) - 0.9977)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs((week.sampleStrain ?? 0) - 641.97)).toBeLessThanOrEqual(0.05);
    expect(Math.abs((week.strain ?? 0) - 693.4)).toBeLessThanOrEqual(0.05);
  });

  it('five flat days and two rest days: 1.4639 and 1756.62 by the sample deviation [strength 42] [strength 43]', () => {
    const week = strain(240, 240, 0, 240, 240, 240, 0);
    expect(Math.abs((week.sampleMonotony ?? 0) - 1.4639)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs((week.sampleStrain ?? 0) - 1756.62)).toBeLessThanOrEqual(0.05);
  });

  it('seven equal days have no monotony and no strain, and say so [strength 44]', () => {
    for (const load of [0, 0.1, 240]) {
      const outcome = trainingStrain({ dailyLoads: Array(7).fill(load) });
      expect(resultOf(outcome)).toMatchObject({
        monotony: null,
        strain: null,
        sampleMonotony: null,
        sampleStrain: null,
      });
      expect(codesOf(outcome)[0]).toBe('no-deviation');
    }
  });

  it('mean 790 over deviation 897 is 0.881 (BMJ Military Health table 1, printed 0.88) [strength 45]', () => {
    expect(Math.abs((monotony(790, 897) ?? 0) - 0.881)).toBeLessThanOrEqual(0.005);
    expect(monotony(790, 0)).toBeNull();
  });

  it('agrees with a statistics library over generated weeks', () => {
    const day = fc.integer({ min: 0, max: 2000 });
    holds(fc.array(day, { minLength: 7, maxLength: 7 }), (days) => {
      fc.pre(days.some((load) => load !== days[0]));
      const week = strain(...days);
      expect(week.monotony).toBeCloseTo(mean(days) / standardDeviation(days), 9);
      expect(week.sampleMonotony).toBeCloseTo(mean(days) / sampleStandardDeviation(days), 9);
      // √(7/6): what the choice of deviation is worth.
      expect((week.monotony ?? 0) / (week.sampleMonotony ?? 1)).toBeCloseTo(1.0801234497, 9);
    });
  });
});

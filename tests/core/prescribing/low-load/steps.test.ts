import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { achievableLoads } from '#core/exercises/achievable-loads.ts';
import { repetitionsBeforeStep } from '#core/prescribing/low-load/double-progression.ts';
import { loadForPercent } from '#core/prescribing/low-load/load-for-percent.ts';
import { roundLoad } from '#core/prescribing/low-load/load-rounding.ts';
import { loadStep, nextOwnedLoad } from '#core/prescribing/low-load/load-step.ts';
import { smallestLoadForStep } from '#core/prescribing/low-load/smallest-load-for-step.ts';
import { twoForTwo } from '#core/prescribing/low-load/two-for-two.ts';
import { holds } from '#tests/support/holds.ts';
import { codesOf, resultOf } from '../../assessment/strength/result-of.ts';

const step = (fromKg: number, toKg: number) => resultOf(loadStep({ fromKg, toKg }));

describe('steps in load (ACSM 2009, 2–10 %)', () => {
  it('5 → 5.5 kg is 10 % and within the window [strength 46]', () => {
    expect(step(5, 5.5).stepPercent).toBeCloseTo(10, 9);
    expect(step(5, 5.5).verdict).toBe('within-window');
  });

  it('4 → 5 kg is 25 %, over the window: repetitions first [strength 47]', () => {
    expect(step(4, 5).stepPercent).toBeCloseTo(25, 9);
    expect(step(4, 5).verdict).toBe('over-window');
    expect(codesOf(loadStep({ fromKg: 4, toKg: 5 }))).toContain('repetitions-first');
  });

  it('draws both edges as whole numbers: 10 % of 3 kg is not over, 2 % of 10 kg not under', () => {
    expect(
      [step(3, 3.3), step(3, 3.301), step(10, 10.2), step(10, 10.199)].map(({ verdict }) => verdict),
    ).toEqual(['within-window', 'over-window', 'within-window', 'under-window']);
    expect([step(5, 5), step(5, 4)].map(({ verdict }) => verdict)).toEqual(['same', 'lighter']);
  });

  it('names the next heavier load owned, and none at the end of the rack', () => {
    expect(nextOwnedLoad(4, [1, 5, 4, 8])).toEqual({ loadKg: 5, stepPercent: 25, verdict: 'over-window' });
    expect(nextOwnedLoad(8, [1, 5, 4, 8])).toBeNull();
  });

  it('a 0.5 kg step stays within 10 % from 5 kg on [strength 122]', () => {
    expect(resultOf(smallestLoadForStep({ plateKg: 0.5, sides: 1 })).smallestLoadKg).toBeCloseTo(5, 9);
  });

  it('0.5 kg on each side of a bar is a 1 kg step, within 10 % from 10 kg on [strength 123]', () => {
    expect(resultOf(smallestLoadForStep({ plateKg: 0.5, sides: 2 }))).toEqual({
      stepKg: 1,
      smallestLoadKg: 10,
    });
  });
});

describe('two-for-two', () => {
  const verdict = (...lastSets: (number | null)[]) =>
    resultOf(twoForTwo({ targetRepetitions: 12, lastSets })).verdict;

  it('target 12 with 14 and 15 in two sessions raises [strength 48]', () => {
    expect(verdict(14, 15)).toBe('increase');
  });

  it('target 12 with 14 then 13 holds [strength 49]', () => {
    expect(verdict(14, 13)).toBe('hold');
  });

  it('a missing count holds, one session holds, and only the last two count', () => {
    expect([verdict(15, null), verdict(null, 15), verdict(15), verdict(), verdict(9, 14, 14)]).toEqual([
      'hold',
      'hold',
      'hold',
      'hold',
      'increase',
    ]);
    expect(codesOf(twoForTwo({ targetRepetitions: 12, lastSets: [15, null] }))).toEqual(['missing']);
  });
});

describe('double progression', () => {
  it('4 → 5 kg keeping 8 repetitions wants 17.5, so 18, at 4 kg (Epley turned round) [strength 50]', () => {
    const outcome = repetitionsBeforeStep({ fromKg: 4, toKg: 5, lowRepetitions: 8 });
    expect(resultOf(outcome)).toEqual({ repetitionsExact: 17.5, repetitionsNeeded: 18 });
    expect(codesOf(outcome)).toEqual(['outside-validity']);
  });

  it('is not flagged up to 15 repetitions and refuses a step that is none', () => {
    expect(codesOf(repetitionsBeforeStep({ fromKg: 10, toKg: 11, lowRepetitions: 8 }))).toEqual([]);
    expect(codesOf(repetitionsBeforeStep({ fromKg: 5, toKg: 5, lowRepetitions: 8 }))).toEqual([
      'input.toKg inconsistent',
    ]);
  });

  it('an exact answer is not rounded up: 10 → 11 kg keeping 10 wants 14', () => {
    expect(resultOf(repetitionsBeforeStep({ fromKg: 10, toKg: 11, lowRepetitions: 10 }))).toEqual({
      repetitionsExact: 14,
      repetitionsNeeded: 14,
    });
  });
});

const dumbbells = [1, 2, 3, 4, 5, 6, 8, 10];
const halfSteps = Array.from({ length: 10 }, (_, place) => (place + 1) / 2);
const rounded = (targetKg: number, availableKg: readonly number[], neverAbove?: boolean) =>
  resultOf(roundLoad({ targetKg, availableKg, neverAbove })).loadKg;

describe('rounding to what the patient owns (rule of this tool)', () => {
  it('4.6 kg goes down to 4 and nearest to 5 [strength 117] [strength 118]', () => {
    expect([rounded(4.6, dumbbells, true), rounded(4.6, dumbbells)]).toEqual([4, 5]);
  });

  it('a tie, 4.5 kg, goes to the lighter 4 kg [strength 119]', () => {
    expect(rounded(4.5, dumbbells)).toBe(4);
    expect(rounded(4.5, [...dumbbells].reverse())).toBe(4);
  });

  it('half-kilogram steps: 3.74 → 3.5 / 3.5 and 3.76 → 3.5 / 4.0 [strength 120] [strength 121]', () => {
    expect([rounded(3.74, halfSteps, true), rounded(3.74, halfSteps)]).toEqual([3.5, 3.5]);
    expect([rounded(3.76, halfSteps, true), rounded(3.76, halfSteps)]).toEqual([3.5, 4]);
  });

  it('says by how much the load is off, signed', () => {
    expect(resultOf(roundLoad({ targetKg: 4, availableKg: [3] })).offPercent).toBeCloseTo(-25, 9);
    expect(resultOf(roundLoad({ targetKg: 4, availableKg: [5] })).offPercent).toBeCloseTo(25, 9);
  });

  it('takes a load equal to the target in spite of stray digits, and none a gram above it', () => {
    expect(rounded(2.9999999999999996, [1, 3], true)).toBe(3);
    expect(rounded(2.9996, [1, 3], true)).toBe(1);
  });

  it('refuses an empty list, and a rack that is all too heavy when never above', () => {
    expect(codesOf(roundLoad({ targetKg: 4, availableKg: [] }))).toEqual(['input.availableKg missing']);
    expect(codesOf(roundLoad({ targetKg: 4, availableKg: [5], neverAbove: true }))).toEqual([
      'input.availableKg inconsistent',
    ]);
  });

  const grams = fc.integer({ min: 1, max: 60_000 }).map((g) => g / 1000);
  const rack = fc.array(grams, { minLength: 1, maxLength: 12 });

  it('nothing owned is nearer, nothing lighter is as near, and order of the list is irrelevant', () => {
    holds(grams, rack, (targetKg, availableKg) => {
      const loadKg = rounded(targetKg, availableKg);
      const distance = (owned: number) => Math.abs(Math.round(owned * 1000) - Math.round(targetKg * 1000));
      for (const owned of availableKg) {
        expect(distance(owned)).toBeGreaterThanOrEqual(distance(loadKg));
        if (owned < loadKg) expect(distance(owned)).toBeGreaterThan(distance(loadKg));
      }
      expect(rounded(targetKg, [...availableKg].reverse())).toBe(loadKg);
    });
  });

  it('never above means never above, and the heaviest of those', () => {
    holds(grams, rack, (targetKg, availableKg) => {
      const outcome = roundLoad({ targetKg, availableKg, neverAbove: true });
      const fitting = availableKg.filter((owned) => owned <= targetKg);
      if (fitting.length === 0) expect(outcome.ok).toBe(false);
      else expect(resultOf(outcome).loadKg).toBe(Math.max(...fitting));
    });
  });

  it('a load for a percentage tells the percentage it really is: 40 % of 11 kg is 4 kg, 36.4 %', () => {
    const { loadKg, truePercent } = resultOf(
      loadForPercent({ oneRepMaxKg: 11, percent: 40, availableKg: dumbbells }),
    );
    expect(loadKg).toBe(4);
    expect(truePercent).toBeCloseTo(36.3636, 4);
  });
});

describe('loads that can be put together', () => {
  const loads = (equipment: Parameters<typeof achievableLoads>[0]) =>
    resultOf(achievableLoads(equipment)).loadsKg;

  it('a 2 kg bar with pairs of 0.5 and 1.25 kg makes four loads', () => {
    expect(loads({ barKg: 2, pairsOfPlatesKg: [0.5, 1.25] })).toEqual([2, 3, 4.5, 5.5]);
  });

  it('two equal pairs add no load twice, and a cuff fills in equal steps', () => {
    expect(loads({ barKg: 2, pairsOfPlatesKg: [1, 1] })).toEqual([2, 4, 6]);
    expect(loads({ cuffStepKg: 0.1, cuffMostKg: 0.3 })).toEqual([0.1, 0.2, 0.3]);
  });

  it('merges what is owned and refuses half-told equipment', () => {
    expect(loads({ fixedKg: [3, 1], cuffStepKg: 0.5, cuffMostKg: 1 })).toEqual([0.5, 1, 3]);
    expect(codesOf(achievableLoads({ cuffStepKg: 0.5 }))).toEqual(['input.cuffStepKg inconsistent']);
    expect(codesOf(achievableLoads({ pairsOfPlatesKg: [1] }))).toEqual(['input.barKg missing']);
    expect(codesOf(achievableLoads({}))).toEqual(['input.fixedKg missing']);
  });

  it('refuses more loads than anybody can use instead of running on', () => {
    const pairsOfPlatesKg = Array.from({ length: 20 }, (_, place) => 2 ** place / 1000);
    expect(codesOf(achievableLoads({ barKg: 1, pairsOfPlatesKg }))).toEqual([
      'input.pairsOfPlatesKg too-high',
    ]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseEquation } from '#core/assessment/strength/equation-choice.ts';
import { equationIds, equations } from '#core/assessment/strength/equations/all.ts';
import { oneRepMax } from '#core/assessment/strength/one-rep-max.ts';
import { oneRepMaxRange } from '#core/assessment/strength/one-rep-max-range.ts';
import { holds } from '#tests/support/holds.ts';
import { resultOf } from './result-of.ts';

type Id = (typeof equationIds)[number];
const kg = (equation: Id, loadKg: number, repetitions: number) =>
  resultOf(oneRepMax({ equation, loadKg, repetitions })).oneRepMaxKg;

describe('the spread of equations', () => {
  it('runs from 1.163 to 1.277 times the load at 8 repetitions (computed, 9 % apart)', () => {
    const { lowKg, highKg } = resultOf(oneRepMaxRange({ loadKg: 1, repetitions: 8 }));
    expect(lowKg).toBeCloseTo(1.1629, 4);
    expect(highKg).toBeCloseTo(1.2767, 4);
  });

  it('names every equation once, either with its figure or with why it was left out', () => {
    const { byEquation, leftOut } = resultOf(oneRepMaxRange({ loadKg: 40, repetitions: 12 }));
    expect(Object.keys(byEquation)).toEqual(['mayhew', 'wathan', 'kemmler']);
    expect(leftOut.map(({ equation }) => equation)).toEqual([
      'epley',
      'brzycki',
      'lombardi',
      'oconner',
      'lander',
    ]);
    expect(leftOut[0]?.reason).toContain('2–10');
  });

  it('gives no maximum from a low-load set to failure: 20 is answered, 21 and 30 are refused', () => {
    const outcomes = [20, 21, 30].map((repetitions) => oneRepMaxRange({ loadKg: 4, repetitions }));
    expect(outcomes.map(({ ok }) => ok)).toEqual([true, false, false]);
  });

  it('scales with the load and never falls as repetitions rise, for every equation in its range', () => {
    holds(
      fc.constantFrom(...equationIds),
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.double({ min: 0.5, max: 4, noNaN: true }),
      fc.nat(18),
      (id, loadKg, scale, more) => {
        const repetitions = Math.min(equations[id].fromRepetitions + more, equations[id].toRepetitions);
        const estimate = kg(id, loadKg, repetitions);
        expect(kg(id, loadKg * scale, repetitions) / (estimate * scale)).toBeCloseTo(1, 12);
        if (repetitions < equations[id].toRepetitions) {
          expect(kg(id, loadKg, repetitions + 1)).toBeGreaterThan(estimate);
        }
      },
    );
  });
});

describe('choice of equation for an older adult', () => {
  const chosen = (repetitions: number, ageYears?: number) => {
    const outcome = chooseEquation({ repetitions, ageYears }, { 'older-adult-years': 55 });
    return outcome.ok ? outcome.result.equation : outcome.refused[0]?.code;
  };

  it('takes the equation fitted in older women from 3 to 20 repetitions, and none beyond', () => {
    expect([2, 3, 20, 21].map((repetitions) => chosen(repetitions, 70))).toEqual([
      'brzycki',
      'kemmler',
      'kemmler',
      'outside-validity',
    ]);
  });

  it('counts a person as older from the clinic’s age on, and when age is not known', () => {
    expect([54, 55, undefined].map((age) => chosen(8, age))).toEqual(['brzycki', 'kemmler', 'kemmler']);
    expect([11, 15, 16].map((repetitions) => chosen(repetitions, 30))).toEqual([
      'mayhew',
      'mayhew',
      'kemmler',
    ]);
  });

  it('is the lowest of all equations wherever it is shown, as the reason says', () => {
    for (let repetitions = 3; repetitions <= 20; repetitions += 1) {
      const { lowKg } = resultOf(oneRepMaxRange({ loadKg: 10, repetitions }));
      expect(lowKg).toBe(kg('kemmler', 10, repetitions));
    }
  });
});

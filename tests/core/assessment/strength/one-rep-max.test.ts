import { describe, expect, it } from 'vitest';
import { equationIds, equations } from '#core/assessment/strength/equations/all.ts';
import { cubicFactor, peakRepetitions } from '#core/assessment/strength/equations/cubic.ts';
import { kemmlerCubic } from '#core/assessment/strength/equations/kemmler.ts';
import { exerciseCubics, oneRepMaxByExercise } from '#core/assessment/strength/exercise-cubics.ts';
import { oneRepMaxFromFive } from '#core/assessment/strength/five-rep-max.ts';
import { oneRepMax } from '#core/assessment/strength/one-rep-max.ts';
import { codesOf, resultOf } from './result-of.ts';

type Id = (typeof equationIds)[number];
const kg = (equation: Id, loadKg: number, repetitions: number) =>
  resultOf(oneRepMax({ equation, loadKg, repetitions })).oneRepMaxKg;
const near = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('published equations give the figures computed from their printed form', () => {
  it('Epley 1985 gives 41.3333 at one repetition as a formula, and is refused there as an estimate [strength 1]', () => {
    near(40 * equations.epley.factor(1), 41.3333, 0.0005);
    expect(codesOf(oneRepMax({ equation: 'epley', loadKg: 40, repetitions: 1 }))).toEqual([
      'input.repetitions outside-validity',
    ]);
  });

  it('Epley 1985 with the unrounded thirtieth: 46.6667 and 53.3333 kg [strength 2] [strength 3]', () => {
    near(kg('epley', 40, 5), 46.6667, 0.0005);
    near(kg('epley', 40, 10), 53.3333, 0.0005);
  });

  it('Epley 1985 is not the rounded 0.0333, which would give 53.3200 kg [strength 4]', () => {
    expect(Math.abs(kg('epley', 40, 10) - 53.32)).toBeGreaterThan(0.0005);
  });

  it('Brzycki 1993, 36/(37−r): 40, 45 and 53.3333 kg [strength 5] [strength 6] [strength 7]', () => {
    near(kg('brzycki', 40, 1), 40, 0.0005);
    near(kg('brzycki', 40, 5), 45, 0.0005);
    near(kg('brzycki', 40, 10), 53.3333, 0.0005);
  });

  it('Brzycki 1993 lies within 0.01 of its decimal form, 90.009 kg [strength 8]', () => {
    near(kg('brzycki', 80, 5), 90.009, 0.01);
    expect(kg('brzycki', 80, 5)).toBe(90);
  });

  it('Brzycki 1993 is refused at its pole, 37 repetitions, and at the sets around it [strength 9]', () => {
    for (const repetitions of [11, 36, 37, 38]) {
      const refusal = oneRepMax({ equation: 'brzycki', loadKg: 40, repetitions });
      expect(codesOf(refusal)).toEqual(['input.repetitions outside-validity']);
    }
  });

  it('Lombardi, Mayhew, O’Conner, Wathan and Lander at the computed figures [strength 10] [strength 11] [strength 12] [strength 13] [strength 14]', () => {
    near(kg('lombardi', 40, 10), 50.357, 0.0005);
    near(kg('mayhew', 40, 10), 52.3737, 0.0005);
    near(kg('oconner', 40, 5), 45, 0.0005);
    expect(equations.oconner.factor(5)).toBeCloseTo(1.125, 12);
    near(kg('wathan', 40, 10), 53.8987, 0.0005);
    near(kg('lander', 40, 10), 53.6281, 0.0005);
  });

  it('Kemmler 2006 gives the 95.43 kg its authors’ group prints for 80 kg × 9 [strength 15]', () => {
    near(kg('kemmler', 80, 9), 95.43, 0.01);
  });

  it('Kemmler 2006 stops rising at 24.1477 repetitions and is refused from 21 on [strength 16]', () => {
    near(peakRepetitions(kemmlerCubic), 24.1477, 0.001);
    expect(oneRepMax({ equation: 'kemmler', loadKg: 80, repetitions: 20 }).ok).toBe(true);
    expect(oneRepMax({ equation: 'kemmler', loadKg: 80, repetitions: 21 }).ok).toBe(false);
    expect(oneRepMax({ equation: 'kemmler', loadKg: 80, repetitions: 2 }).ok).toBe(false);
  });

  it('Sports 2024;12(9):233, leg extension: 12.800 kg from 10 kg × 10 [strength 17]', () => {
    const outcome = oneRepMaxByExercise({ exercise: 'leg-extension', loadKg: 10, repetitions: 10 });
    near(resultOf(outcome).oneRepMaxKg, 12.8, 0.001);
  });

  it('Sports 2024 curves hold for 5–16 repetitions, peak where computed and start near one', () => {
    const computed = {
      'lat-pulldown': [18.4, 1.3031],
      'triceps-dips': [21.7, 1.2905],
      'trunk-extension': [16.4, 1.2581],
      'trunk-flexion': [19.8, 1.2569],
      'leg-extension': [20.5, 1.28],
      'leg-flexion': [21.4, 1.2906],
    } as const;
    for (const [exercise, [peak, atTen]] of Object.entries(computed)) {
      const cubic = exerciseCubics[exercise as keyof typeof computed];
      near(peakRepetitions(cubic), peak, 0.05);
      near(cubicFactor(cubic, 10), atTen, 0.00005);
      near(cubicFactor(cubic, 1), 1.005, 0.004);
    }
    const ok = [4, 5, 16, 17].map(
      (repetitions) => oneRepMaxByExercise({ exercise: 'leg-flexion', loadKg: 10, repetitions }).ok,
    );
    expect(ok).toEqual([false, true, true, false]);
  });

  it('Reynolds 2006 lines: 45.928 kg chest press, 123.955 kg leg press [strength 18] [strength 19]', () => {
    near(resultOf(oneRepMaxFromFive({ lift: 'chest-press', fiveRepMaxKg: 40 })).oneRepMaxKg, 45.928, 0.001);
    near(resultOf(oneRepMaxFromFive({ lift: 'leg-press', fiveRepMaxKg: 100 })).oneRepMaxKg, 123.955, 0.001);
  });

  it('Reynolds 2006 leg press warns where its fixed part outweighs a tenth of the load', () => {
    const codes = [142, 143].map((fiveRepMaxKg) =>
      codesOf(oneRepMaxFromFive({ lift: 'leg-press', fiveRepMaxKg })).includes('intercept-large'),
    );
    expect(codes).toEqual([true, false]);
  });

  it('Epley and Brzycki agree at ten repetitions and at no other above one [strength 20]', () => {
    const equal = Array.from({ length: 35 }, (_, place) => place + 2).filter(
      (r) => Math.abs(equations.epley.factor(r) - equations.brzycki.factor(r)) < 1e-12,
    );
    expect(equal).toEqual([10]);
  });

  it('each equation is refused one repetition outside the set it is shown for', () => {
    const shown: Record<Id, readonly [number, number]> = {
      epley: [2, 10],
      brzycki: [1, 10],
      lombardi: [1, 10],
      mayhew: [1, 15],
      oconner: [1, 10],
      wathan: [1, 15],
      lander: [1, 10],
      kemmler: [3, 20],
    };
    for (const id of equationIds) {
      const [low, high] = shown[id];
      const ok = [low - 1, low, high, high + 1].map(
        (repetitions) => oneRepMax({ equation: id, loadKg: 20, repetitions }).ok,
      );
      expect([id, ...ok]).toEqual([id, false, true, true, false]);
    }
  });
});

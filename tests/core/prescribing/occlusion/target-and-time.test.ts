/** Target pressure, time under restriction, load and passive bouts against worked and published values. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeTargetMmhg } from '#core/prescribing/occlusion/pressure/occlusion-target.ts';
import { occlusionSchemes } from '#core/prescribing/occlusion/schemes.ts';
import { holds, holdsIn } from '#tests/support/holds.ts';
import { noteCodes, refusalsOf, resultOf } from './row-answers.ts';

const target = (limbOcclusionPressureMmhg: number, percent: number) => ({
  limbOcclusionPressureMmhg,
  percent,
});

describe('target from a measured limb occlusion pressure (position stand 2019: 40-80 %, from memory, restated by others)', () => {
  it.each([
    [40, 72],
    [50, 90],
    [60, 108],
    [80, 144],
  ])('180 mmHg at %i %% is %i mmHg [occlusion 23]', (percent, expected) => {
    expect(resultOf('occlusion-target', target(180, percent)).pressureMmhg).toBe(expected);
  });

  it('203 mmHg at 60 % is 121.8 and goes to the cuff as 122 [occlusion 24]', () => {
    expect(resultOf('occlusion-target', target(203, 60)).pressureMmhg).toBeCloseTo(121.8, 9);
    expect(wholeTargetMmhg(203, 60)).toBe(122);
  });

  it('is never rounded up past 80 % of the measurement', () => {
    // 182 × 0.8 = 145.6: the nearest whole number would lie over the bound.
    expect(wholeTargetMmhg(182, 80)).toBe(145);
    holds(
      fc.integer({ min: 50, max: 500 }),
      fc.double({ min: 40, max: 80, noNaN: true }),
      (pressure, percent) => {
        expect(wholeTargetMmhg(pressure, percent)).toBeLessThanOrEqual(pressure * 0.8);
        expect(Math.abs(wholeTargetMmhg(pressure, percent) - (pressure * percent) / 100)).toBeLessThan(1);
      },
    );
  });

  it('warns under 40 and over 80 %, accepts both bounds [occlusion 25]', () => {
    expect(noteCodes('occlusion-target', target(180, 39))).toContain('outside-range');
    expect(noteCodes('occlusion-target', target(180, 40))).not.toContain('outside-range');
    expect(noteCodes('occlusion-target', target(180, 80))).not.toContain('outside-range');
    expect(noteCodes('occlusion-target', target(180, 81))).toContain('outside-range');
  });

  it('refuses full occlusion with resistance; passive work takes 70 to 100 % with review [occlusion 26]', () => {
    expect(refusalsOf('occlusion-target', target(180, 99))).toEqual([]);
    expect(refusalsOf('occlusion-target', target(180, 100))).toEqual(['input.percent too-high']);
    expect(refusalsOf('occlusion-target', target(180, 101))).toEqual(['input.percent too-high']);
    const passive = (percent: number) => ({
      ...target(180, percent),
      bouts: 5,
      boutMinutes: 5,
      restMinutes: 5,
    });
    expect(noteCodes('passive-occlusion', passive(100))).toContain('clinician-review');
    expect(noteCodes('passive-occlusion', passive(70))).toContain('clinician-review');
    expect(refusalsOf('passive-occlusion', passive(69))).toEqual(['input.percent too-low']);
    expect(refusalsOf('passive-occlusion', passive(101))).toEqual(['input.percent too-high']);
  });
});

const work = (
  repetitions: readonly number[],
  secondsPerRepetition: number,
  restSeconds: number,
  inflation = 'continuous',
  limb = 'leg',
) => ({ repetitions, secondsPerRepetition, restSeconds, inflation, limb });
const thirty = [30, 15, 15, 15];

describe('time under restriction', () => {
  it('30/15/15/15 at 5 s with 45 s rest: 375 of work, 510 continuous, 375 intermittent (J Exp Orthop 2022 table 1, published) [occlusion 27]', () => {
    expect(resultOf('restriction-time', work(thirty, 5, 45))).toMatchObject({
      underTensionSeconds: 375,
      restrictedSeconds: 510,
    });
    expect(resultOf('restriction-time', work(thirty, 5, 45, 'intermittent')).restrictedSeconds).toBe(375);
  });

  it('30/15/15/30 at 5 s with 45 s rest: 450 and 585 (J Exp Orthop 2022 table 1, published) [occlusion 28]', () => {
    expect(resultOf('restriction-time', work([30, 15, 15, 30], 5, 45))).toMatchObject({
      underTensionSeconds: 450,
      restrictedSeconds: 585,
    });
  });

  it.each([
    [29, 4, 30, 300, 390],
    [30, 2, 30, 150, 240],
    [31, 4, 60, 300, 480],
  ])('30/15/15/15 by arithmetic [occlusion %i]', (_, seconds, rest, tension, restricted) => {
    expect(resultOf('restriction-time', work(thirty, seconds, rest))).toMatchObject({
      underTensionSeconds: tension,
      restrictedSeconds: restricted,
    });
  });

  it('630 s passes the 600 s of one exercise (limit from memory of the position stand) [occlusion 32]', () => {
    const long = resultOf('restriction-time', work(thirty, 6, 60));
    expect(long).toMatchObject({ restrictedSeconds: 630, capSeconds: 600, withinExerciseCap: false });
    expect(resultOf('restriction-time', work([60, 60], 4.5, 60)).withinExerciseCap).toBe(true); // 600 s exactly
    expect(resultOf('restriction-time', work([60, 60], 4.5, 61)).withinExerciseCap).toBe(false);
  });

  it('the usual scheme holds 75 repetitions (restated by a maker) [occlusion 33]', () => {
    const scheme = occlusionSchemes.find(({ id }) => id === 'thirty-then-fifteens')!;
    expect(scheme.repetitions).toEqual([30, 15, 15, 15]);
    expect(scheme.repetitions.reduce<number>((sum, count) => sum + count, 0)).toBe(75);
  });

  it('three exercises of 390 s pass under 20 min for a leg and fail under 15 min for an arm [occlusion 34]', () => {
    const session = (limb: string) =>
      resultOf('occlusion-session-time', { restrictedSeconds: [390, 390, 390], limb });
    expect(session('leg')).toMatchObject({ totalSeconds: 1170, withinSessionCap: true });
    expect(session('arm')).toMatchObject({ totalSeconds: 1170, withinSessionCap: false });
  });

  it('three exercises of 480 s fail for a leg [occlusion 35]', () => {
    expect(
      resultOf('occlusion-session-time', { restrictedSeconds: [480, 480, 480], limb: 'leg' }),
    ).toMatchObject({
      totalSeconds: 1440,
      withinSessionCap: false,
    });
  });

  it('the session cap itself is over: under, at, over for each limb', () => {
    const within = (total: number, limb: string) =>
      resultOf('occlusion-session-time', { restrictedSeconds: [total / 2, total / 2], limb })
        .withinSessionCap;
    expect([within(1199, 'leg'), within(1200, 'leg'), within(1201, 'leg')]).toEqual([true, false, false]);
    expect([within(899, 'arm'), within(900, 'arm'), within(901, 'arm')]).toEqual([true, false, false]);
  });

  it('one exercise of a session may take 600 s and no more', () => {
    const caps = (seconds: number) =>
      resultOf('occlusion-session-time', { restrictedSeconds: [seconds], limb: 'leg' }).withinExerciseCaps;
    expect([caps(599), caps(600), caps(601)]).toEqual([true, true, false]);
  });

  it('five passive bouts of 5 min with 5 min rest: 25 min occluded, 45 min in all (from memory) [occlusion 36]', () => {
    expect(
      resultOf('passive-occlusion', { ...target(180, 70), bouts: 5, boutMinutes: 5, restMinutes: 5 }),
    ).toMatchObject({ occludedMinutes: 25, elapsedMinutes: 45 });
  });

  it('more repetitions, slower repetitions or longer rests never shorten it, and letting the cuff down never lengthens it', () => {
    const plan = fc.record({
      repetitions: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 }),
      tempo: fc.integer({ min: 1, max: 8 }),
      rest: fc.integer({ min: 0, max: 120 }),
    });
    const seconds = (input: unknown) => resultOf('restriction-time', input).restrictedSeconds as number;
    holdsIn(5000, plan, ({ repetitions, tempo, rest }) => {
      const base = seconds(work(repetitions, tempo, rest));
      expect(seconds(work([...repetitions, 1], tempo, rest))).toBeGreaterThan(base);
      expect(seconds(work(repetitions, tempo + 1, rest))).toBeGreaterThan(base);
      expect(seconds(work(repetitions, tempo, rest + 1))).toBeGreaterThanOrEqual(base);
      expect(seconds(work(repetitions, tempo, rest, 'intermittent'))).toBeLessThanOrEqual(base);
    });
  });
});

describe('load of occlusion work', () => {
  it('a fourth set of more than 15 repetitions asks for the smallest step, 15 does not (trial protocol PMC7534706, table 3) [occlusion 37]', () => {
    const due = (fourthSetRepetitions: number) =>
      resultOf('occlusion-load-step', { fourthSetRepetitions }).smallestStepDue;
    expect([due(14), due(15), due(16)]).toEqual([false, false, true]);
  });

  it.each([
    [40, 12],
    [45, 13.5],
    [62.5, 18.75],
  ])('30 %% of %f kg is %f kg [occlusion 38]', (oneRepMaxKg, expected) => {
    expect(resultOf('occlusion-load', { oneRepMaxKg, percent: 30 }).loadKg).toBeCloseTo(expected, 9);
  });

  it('lies in 20 to 40 % of the maximum', () => {
    const at = (percent: number) => refusalsOf('occlusion-load', { oneRepMaxKg: 40, percent });
    expect([at(19.9), at(20), at(40), at(40.1)]).toEqual([
      ['input.percent too-low'],
      [],
      [],
      ['input.percent too-high'],
    ]);
  });
});

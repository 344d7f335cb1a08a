/** What statics says must hold for every adult body, over generated bodies and settings. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levers } from '#core/exercises/setting.ts';
import { bandForceRow, bandPointRow } from '#core/exercises/statics/band.ts';
import { bridgeLoad } from '#core/exercises/statics/bridge.ts';
import { relativeHipMoment, relativeKneeMoment } from '#core/exercises/statics/chair-height.ts';
import { heelRaise } from '#core/exercises/statics/heel-raise.ts';
import { leanBackRowShare } from '#core/exercises/statics/lean-back-row.ts';
import { limbLiftMoment } from '#core/exercises/statics/limb-lift.ts';
import { pushUpShare } from '#core/exercises/statics/push-up.ts';
import { pushUpMeasuredShare } from '#core/exercises/statics/push-up-measured.ts';
import { sitToStand } from '#core/exercises/statics/sit-to-stand.ts';
import { wallPushUpShare } from '#core/exercises/statics/wall-push-up.ts';
import { holds } from '#tests/support/holds.ts';

const sex = fc.constantFrom('female', 'male');
const massKg = fc.double({ min: 25, max: 300, noNaN: true });
const statureM = fc.double({ min: 1, max: 2.3, noNaN: true });
const body = fc.record({ sex, massKg, statureM });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Rounding of doubles. */
const hair = 1e-9;

describe('A higher seat needs no more', () => {
  it('by the static sum of hip and knee', () => {
    holds(body, between(0.1, 1), between(0, 0.5), (who, seat, higher) => {
      const low = sitToStand(who.sex, who.massKg, who.statureM, seat);
      const high = sitToStand(who.sex, who.massKg, who.statureM, seat + higher);
      if (low && high) expect(high.hipPlusKneeNm).toBeLessThanOrEqual(low.hipPlusKneeNm + hair);
      else expect(high).toBeNull();
    });
  });

  it('by the measured ratios of knee and hip', () => {
    holds(between(0.43, 0.64), between(0.43, 0.64), (a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      expect(relativeKneeMoment(high)!).toBeLessThanOrEqual(relativeKneeMoment(low)! + hair);
      expect(relativeHipMoment(high)!).toBeLessThanOrEqual(relativeHipMoment(low)! + hair);
    });
  });
});

describe('Higher hands need less, higher feet more', () => {
  it('by the closed form, as long as it answers', () => {
    holds(statureM, between(0, 2), between(0.001, 1), (stature, height, higher) => {
      const low = pushUpShare(stature, height, 0);
      const high = pushUpShare(stature, height + higher, 0);
      if (low && high) expect(high.verticalShare).toBeLessThan(low.verticalShare);
      if (!low) expect(high).toBeNull();
    });
  });

  it('by the measured shares', () => {
    holds(between(0, 0.6096), between(0, 0.6096), (a, b) => {
      fc.pre(a !== b);
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      expect(pushUpMeasuredShare(high, 0)!).toBeLessThanOrEqual(pushUpMeasuredShare(low, 0)!);
      expect(pushUpMeasuredShare(0, high)!).toBeGreaterThanOrEqual(pushUpMeasuredShare(0, low)!);
    });
  });

  it('never puts more than the whole body on the hands', () => {
    holds(statureM, between(0, 2), between(0, 2), (stature, hand, foot) => {
      const push = pushUpShare(stature, hand, foot);
      if (!push) return;
      expect(push.verticalShare).toBeGreaterThan(0);
      expect(push.alongArmShare).toBeLessThan(1);
    });
  });
});

describe('Feet farther from the wall, or a body leaning farther back, need more', () => {
  it('in a push-up against the wall', () => {
    holds(sex, between(1.3, 2.1), between(0.3, 1), between(0.001, 0.2), (who, stature, distance, step) => {
      const push = { sex: who, statureM: stature, elbows: 'straight' } as const;
      const near = wallPushUpShare({ ...push, footDistanceM: distance });
      const far = wallPushUpShare({ ...push, footDistanceM: distance + step });
      if (near && far) expect(far.share).toBeGreaterThan(near.share);
    });
  });

  it('in a lean-back row', () => {
    holds(between(30, 75), between(30, 75), (a, b) => {
      const [upright, leaning] = [Math.min(a, b), Math.max(a, b)];
      expect(leanBackRowShare(leaning)!).toBeGreaterThanOrEqual(leanBackRowShare(upright)!);
    });
  });
});

describe('Twice the mass is twice the moment, and added weight never lightens', () => {
  it('in limb lifts', () => {
    holds(body, fc.constantFrom(...levers), between(-89, 89), between(0, 20), (who, lever, angleDeg, kg) => {
      const bare = limbLiftMoment({ ...who, lever, angleDeg, addedKg: 0 });
      const doubled = limbLiftMoment({ ...who, massKg: 2 * who.massKg, lever, angleDeg, addedKg: 0 });
      expect(doubled / bare).toBeCloseTo(2, 9);
      expect(limbLiftMoment({ ...who, lever, angleDeg, addedKg: kg })).toBeGreaterThanOrEqual(bare);
    });
  });

  it('in bridges and heel raises, where one leg takes more than two', () => {
    holds(body, between(0, 20), (who, kg) => {
      const two = bridgeLoad({ ...who, legs: 'two', addedKg: 0 })!;
      const doubled = bridgeLoad({ ...who, massKg: 2 * who.massKg, legs: 'two', addedKg: 0 })!;
      expect(doubled.hipMomentNm / two.hipMomentNm).toBeCloseTo(2, 9);
      expect(bridgeLoad({ ...who, legs: 'two', addedKg: kg })!.hipMomentNm).toBeGreaterThanOrEqual(
        two.hipMomentNm,
      );
      const oneBent = bridgeLoad({ ...who, legs: 'one-bent', addedKg: 0 })!;
      const oneStraight = bridgeLoad({ ...who, legs: 'one-straight', addedKg: 0 })!;
      expect(oneBent.hipMomentNm).toBeGreaterThan(2 * two.hipMomentNm);
      expect(oneStraight.hipMomentNm).toBeGreaterThan(oneBent.hipMomentNm);
      const heels = heelRaise({ ...who, legs: 'two', addedKg: kg });
      expect(heelRaise({ ...who, legs: 'one', addedKg: kg }).ankleMomentNm / heels.ankleMomentNm).toBeCloseTo(
        2,
        9,
      );
    });
  });
});

describe('A calibrated band', () => {
  it('pulls harder the longer it is, and gives its own calibration points back', () => {
    holds(between(0.1, 2), between(0.1, 20), between(0.1, 20), between(0, 1), (rest, kg, more, part) => {
      const point = (stretchedLengthM: number, hungKg: number) => {
        const outcome = bandPointRow.calculate({ restLengthM: rest, stretchedLengthM, hungKg });
        return outcome.ok ? outcome.result : { elongationPercent: Number.NaN, forceN: Number.NaN };
      };
      const first = point(rest * 1.5, kg);
      const second = point(rest * 3, kg + more);
      const elongationPercent =
        first.elongationPercent + part * (second.elongationPercent - first.elongationPercent);
      const force = bandForceRow.calculate({
        firstElongationPercent: first.elongationPercent,
        firstForceN: first.forceN,
        secondElongationPercent: second.elongationPercent,
        secondForceN: second.forceN,
        elongationPercent: Math.min(elongationPercent, second.elongationPercent),
      });
      if (!force.ok) throw new Error(JSON.stringify(force.refused));
      expect(force.result.forceN).toBeGreaterThanOrEqual(first.forceN - hair);
      expect(force.result.forceN).toBeLessThanOrEqual(second.forceN + 1e-6);
    });
  });
});

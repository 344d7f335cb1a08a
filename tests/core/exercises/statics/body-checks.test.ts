import { describe, expect, it } from 'vitest';
import { bodyCentreArmsDownShare } from '#core/exercises/body/body-centre.ts';
import { leverConstant, leverConstantIn } from '#core/exercises/body/lever-constant.ts';
import { movedMassShare } from '#core/exercises/body/moved-mass.ts';
import { segments } from '#core/exercises/body/segments.ts';
import { bridgeLoad } from '#core/exercises/statics/bridge.ts';
import { relativeHipMoment, relativeKneeMoment } from '#core/exercises/statics/chair-height.ts';
import { curlRow } from '#core/exercises/statics/curl.ts';
import { heelRaise } from '#core/exercises/statics/heel-raise.ts';
import { kneeExtensionRow } from '#core/exercises/statics/knee-extension.ts';
import { kneeExtensionNormRow } from '#core/exercises/statics/knee-extension-norms.ts';
import { limbLiftMoment, weightDistanceM } from '#core/exercises/statics/limb-lift.ts';
import { sitToStand, sitToStandRow } from '#core/exercises/statics/sit-to-stand.ts';
import { resultOf } from './answered.ts';

const woman = { sex: 'female', massKg: 65, statureM: 1.62 } as const;
const man = { sex: 'male', massKg: 80, statureM: 1.75 } as const;
const within = (value: number, expected: number, tolerance: number): void =>
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('Segments and moved mass (de Leva 1996, table seen)', () => {
  it('moves 0.886 of a man’s mass in a squat [strength 80]', () =>
    within(movedMassShare('squat-two-legs', 'male'), 0.886, 1e-9));
  it('moves 0.878 of a woman’s mass in a squat [strength 81]', () =>
    within(movedMassShare('squat-two-legs', 'female'), 0.878, 1e-9));
  it('moves 0.943 and 0.939 on one leg [strength 82]', () => {
    within(movedMassShare('squat-one-leg', 'male'), 0.943, 1e-9);
    within(movedMassShare('squat-one-leg', 'female'), 0.939, 1e-9);
  });
  it('moves the body less forearms and hands in a pull-up, 0.955 and 0.961', () => {
    within(movedMassShare('pull-up', 'male'), 0.955, 5e-4);
    within(movedMassShare('pull-up', 'female'), 0.961, 5e-4);
  });
  it('sums to the whole body, 1.0000 and 0.9999 [strength 83]', () => {
    const sum = (sex: 'male' | 'female'): number => {
      const { headAndNeck, trunk, ...limbs } = segments[sex];
      const pairs = Object.values(limbs).reduce((total, limb) => total + 2 * limb.massShare, 0);
      return headAndNeck.massShare + trunk.massShare + pairs;
    };
    within(sum('male'), 1, 1e-9);
    within(sum('female'), 0.9999, 1e-9);
  });
  it('puts the centre of mass at 0.5763 and 0.5536 of stature [strength 84]', () => {
    within(bodyCentreArmsDownShare('male'), 0.5763, 0.0005);
    within(bodyCentreArmsDownShare('female'), 0.5536, 0.0005);
  });
});

describe('Lever constants and limb lifts (computed from de Leva 1996)', () => {
  it.each([
    ['straight-leg', '[strength 85]', 0.03643, 0.0331],
    ['shank', '[strength 86]', 0.00854, 0.0088],
    ['forearm', '[strength 87]', 0.00233, 0.002],
  ] as const)('gives the constant of the %s %s', (lever, _row, male, female) => {
    within(leverConstant(lever, 'male'), male, 1e-5);
    within(leverConstant(lever, 'female'), female, 1e-5);
  });

  it('gives the constants of bent leg and straight arm', () => {
    within(leverConstant('bent-leg', 'male'), 0.02788, 1e-5);
    within(leverConstant('bent-leg', 'female'), 0.02429, 1e-5);
    within(leverConstant('straight-arm', 'male'), 0.00846, 1e-5);
    within(leverConstant('straight-arm', 'female'), 0.0074, 1e-5);
  });

  it('loads the hip by 34.18 N·m in a level straight-leg raise [strength 88]', () => {
    within(limbLiftMoment({ ...woman, lever: 'straight-leg', angleDeg: 0, addedKg: 0 }), 34.18, 0.02);
  });

  it('loads the hip by 41.55 N·m at 30° with 2 kg at 0.7036 m [strength 89]', () => {
    const lift = { ...woman, lever: 'straight-leg', angleDeg: 30, addedKg: 2, distanceM: 0.7036 } as const;
    within(limbLiftMoment(lift), 41.55, 0.02);
  });

  it('loads the hip by 66.04 N·m lying on the side with 2 kg at 0.817 m [strength 90]', () => {
    const lift = { ...man, lever: 'straight-leg', angleDeg: 0, addedKg: 2, distanceM: 0.817 } as const;
    within(limbLiftMoment(lift), 66.04, 0.02);
  });

  it('knows where an ankle cuff and a hand weight usually sit', () => {
    within(weightDistanceM('straight-leg', 'female', 1.62), 0.7036, 0.0005);
    within(weightDistanceM('shank', 'female', 1.62), 0.3595, 0.0005);
    within(weightDistanceM('forearm', 'male', 1.75), 0.3387, 0.0005);
  });

  it('moves by 3 N·m of 50 when another segment table is used', () => {
    const leg = (value: number): number => value * 80 * 1.75 * 9.80665;
    // 47.2 against 50.0 N·m, man of 80 kg and 1.75 m, computed.
    within(leg(leverConstantIn('cadaver', 'straight-leg', 'male')!), 47.2, 0.05);
    within(leg(leverConstantIn('young', 'straight-leg', 'male')!), 50, 0.05);
    expect(leverConstantIn('cadaver', 'forearm', 'male')).toBeNull();
  });

  it('is lighter with the segment masses of people of about seventy (Pavol 2002, data file seen)', () => {
    // 65 kg × 1.62 m × g × Σ mass share × distance, with 11.62, 4.56 and 1.23 % of body mass; computed by hand.
    within(leverConstantIn('older', 'straight-leg', 'female')! * 65 * 1.62 * 9.80665, 30.54, 0.05);
    // Men: 11.27, 4.41 and 1.27 %.
    within(leverConstantIn('older', 'straight-leg', 'male')!, 0.03332, 0.0001);
  });

  it('calls 1 to 2 kg at the ankle a step of 28 %, not of 100 %', () => {
    const lift = { ...woman, lever: 'shank', angleDeg: 0, addedKg: 1 } as const;
    within(limbLiftMoment(lift), 12.6, 0.05);
    within((limbLiftMoment({ ...lift, addedKg: 2 }) / limbLiftMoment(lift) - 1) * 100, 28, 0.5);
  });
});

describe('Knee extension with 3 kg at 0.3595 m (computed)', () => {
  it.each([
    ['[strength 91]', 90, 0],
    ['[strength 92]', 60, 9.83],
    ['[strength 93]', 30, 17.03],
    ['[strength 94]', 0, 19.67],
  ])('loads the knee by the cosine of its flexion %s', (_row, flexionDeg, expected) => {
    const result = resultOf(kneeExtensionRow, { ...woman, flexionDeg, addedKg: 3, distanceM: 0.3595 });
    within(result.momentNm, expected, 0.02);
  });

  it('is 18.5 to 21.6 % of the mean of older women, 1.40–1.64 N·m/kg (Šarabon 2021, abstract) [strength 95]', () => {
    const share = resultOf(kneeExtensionNormRow, { massKg: 65, momentNm: 19.67, group: 'older-women' });
    within(share.lowPercent, 18.5, 0.1);
    within(share.highPercent, 21.6, 0.1);
  });
});

describe('Curl with 4 kg at 0.3387 m (computed)', () => {
  it.each([
    ['[strength 96]', 0, 16.48],
    ['[strength 97]', 60, 8.24],
  ])('loads the elbow by the cosine of the forearm angle %s', (_row, angleDeg, expected) => {
    within(resultOf(curlRow, { ...man, angleDeg, addedKg: 4, distanceM: 0.3387 }).momentNm, expected, 0.02);
  });
});

describe('Heel raise, bridge and sit to stand (computed, no measurement found)', () => {
  it('loads the ankle by 46.95 and 93.91 N·m [strength 98]', () => {
    within(heelRaise({ ...man, legs: 'two', addedKg: 0 }).ankleMomentNm, 46.95, 0.05);
    within(heelRaise({ ...man, legs: 'one', addedKg: 0 }).ankleMomentNm, 93.91, 0.05);
  });

  it('puts 0.425 of body weight on two feet in a bridge [strength 99]', () => {
    within(bridgeLoad({ ...man, legs: 'two', addedKg: 0 })!.footForceShare, 0.425, 0.002);
  });

  it('loads the hip by 28.5 N·m on two legs and 95.1 on one [strength 100]', () => {
    within(bridgeLoad({ ...man, legs: 'two', addedKg: 0 })!.hipMomentNm, 28.5, 0.2);
    within(bridgeLoad({ ...man, legs: 'one-straight', addedKg: 0 })!.hipMomentNm, 95.1, 0.2);
    within(bridgeLoad({ ...man, legs: 'two', addedKg: 10 })!.hipMomentNm, 38.5, 0.2);
  });

  it('sums hip and knee to 128.2 N·m per leg with the thigh level [strength 101]', () => {
    const low = sitToStand('male', 80, 1.75, 0.3)!;
    expect(low.thighAboveHorizontalDeg).toBe(0);
    within(low.hipPlusKneeNm, 128.2, 0.3);
  });

  it('sums to 77.5 N·m per leg on a seat of 0.50 m, thigh at 23.5° [strength 102]', () => {
    const seat = resultOf(sitToStandRow, { ...woman, seatHeightM: 0.5 });
    within(seat.hipPlusKneeNm, 77.5, 0.3);
    within(seat.thighAboveHorizontalDeg, 23.5, 0.1);
  });

  it('ranks seats by the measured ratios, knee × 1.9 and hip × 2.4 from 64 to 43 cm, and nothing outside', () => {
    // Yoshioka 2014, introduction, of an earlier study.
    expect([relativeKneeMoment(0.64), relativeKneeMoment(0.43)]).toEqual([1, 1.9]);
    expect([relativeHipMoment(0.64), relativeHipMoment(0.43)]).toEqual([1, 2.4]);
    expect([relativeKneeMoment(0.65), relativeKneeMoment(0.42)]).toEqual([null, null]);
  });
});

import { describe, expect, it } from 'vitest';
import { degrees } from '#core/exercises/body/gravity.ts';
import { ladder } from '#core/exercises/ladder/ladder.ts';
import { leanBackRowFit, leanBackRowRow } from '#core/exercises/statics/lean-back-row.ts';
import { pushUpRow, pushUpShare } from '#core/exercises/statics/push-up.ts';
import { pushUpMeasuredShare } from '#core/exercises/statics/push-up-measured.ts';
import { wallPushUpRow, wallPushUpShare } from '#core/exercises/statics/wall-push-up.ts';
import { pushUpInput, resultOf } from './answered.ts';

describe('Measured share of body mass in push-ups (Ebben 2011, values second-hand)', () => {
  // Ebben 2011, J Strength Cond Res 25:2891–2894.
  it.each([
    ['[strength 53]', 'flat', 0, 0, 0.64],
    ['[strength 54]', 'hands on 30.48 cm', 0.3048, 0, 0.55],
    ['[strength 55]', 'hands on 60.96 cm', 0.6096, 0, 0.41],
    ['[strength 56]', 'feet on 30.48 cm', 0, 0.3048, 0.7],
    ['[strength 57]', 'feet on 60.96 cm', 0, 0.6096, 0.74],
  ])('is the published share %s', (_row, _variant, hand, foot, share) => {
    expect(pushUpMeasuredShare(hand, foot)).toBe(share);
  });

  it('is 0.49 on the knees, measured and never modelled [strength 58]', () => {
    const result = resultOf(pushUpRow, pushUpInput({ support: 'knees' }));
    expect(result.verticalShare).toBe(0.49);
    expect(result.measuredShare).toBe(0.49);
    expect(result.alongArmShare).toBeNull();
  });

  it('makes 51.2 kg of 80 kg body mass on the floor [strength 59]', () => {
    const levels = ladder('push-up', { sex: 'male', massKg: 80, statureCm: 175 });
    // 0.64 × 80 kg.
    expect(levels.find((level) => level.exerciseId === 'push-up')?.effectiveLoadKg).toBeCloseTo(51.2, 9);
  });

  it('gives nothing above the highest hands measured, and nothing for hands and feet both raised', () => {
    expect(pushUpMeasuredShare(0.6096, 0)).toBe(0.41);
    expect(pushUpMeasuredShare(0.61, 0)).toBeNull();
    expect(pushUpMeasuredShare(0.3, 0.3)).toBeNull();
  });
});

describe('Closed form of the push-up at a stature of 1.70 m (computed)', () => {
  it.each([
    ['[strength 60] [strength 61] [strength 62]', 0, 0, 17.729, 0.6613, 0.6299],
    ['[strength 63] [strength 64] [strength 65]', 0.3, 0, 29.406, 0.5918, 0.5155],
    ['[strength 66] [strength 67] [strength 68]', 0.6, 0, 41.607, 0.493, 0.3686],
    ['[strength 69] [strength 70] [strength 71]', 0, 0.3, 6.051, 0.7035, 0.6995],
    ['[strength 72] [strength 73] [strength 74]', 0.9, 0, 55.115, 0.3579, 0.2047],
    ['[strength 75] [strength 76] [strength 77]', 1.2, 0, 71.784, 0.1648, 0.0515],
  ])('gives angle, along-arm and vertical share %s', (_rows, hand, foot, angle, along, vertical) => {
    const push = pushUpShare(1.7, hand, foot);
    expect(Math.abs(degrees(push!.angleRadians) - angle)).toBeLessThan(0.005);
    expect(Math.abs(push!.alongArmShare - along)).toBeLessThan(0.0005);
    expect(Math.abs(push!.verticalShare - vertical)).toBeLessThan(0.0005);
  });

  it('gives the vertical share under both of its names, alike for women and men', () => {
    const woman = resultOf(pushUpRow, pushUpInput({ sex: 'female' }));
    expect(woman.shareOfBodyMass).toBe(woman.verticalShare);
    expect(woman).toEqual(resultOf(pushUpRow, pushUpInput({ sex: 'male' })));
  });

  it('refuses a height the body cannot reach, and raised hands on the knees', () => {
    const tooHigh = pushUpRow.calculate(pushUpInput({ handHeightM: 1.6 }));
    expect(tooHigh).toMatchObject({
      ok: false,
      refused: [{ field: 'input.handHeightM', code: 'outside-validity' }],
    });
    const knees = pushUpRow.calculate(pushUpInput({ support: 'knees', handHeightM: 0.3 }));
    expect(knees).toMatchObject({ ok: false, refused: [{ code: 'outside-validity' }] });
  });
});

describe('Push-up against the wall (model only, no measurement found)', () => {
  it('is 0.105 at 0.8 m with straight arms, body at 76.752° [strength 103]', () => {
    const push = wallPushUpShare({ sex: 'male', statureM: 1.75, footDistanceM: 0.8, elbows: 'straight' });
    expect(Math.abs(push!.share - 0.105)).toBeLessThan(0.002);
    expect(Math.abs(degrees(push!.angleRadians) - 76.752)).toBeLessThan(0.002);
  });

  // Shares at straight and bent arms, computed for a man of 1.75 m and a woman of 1.62 m.
  it.each([
    ['male', 1.75, 0.6, 0.006, 0.231],
    ['male', 1.75, 1, 0.212, 0.524],
    ['female', 1.62, 0.7, 0.089, 0.345],
    ['female', 1.62, 1, 0.276, 0.658],
  ] as const)(
    'gives the table of straight and bent arms (%s, %f m, feet at %f m)',
    (sex, statureM, footDistanceM, straight, bent) => {
      const push = { sex, statureM, footDistanceM };
      expect(Math.abs(wallPushUpShare({ ...push, elbows: 'straight' })!.share - straight)).toBeLessThan(
        0.001,
      );
      expect(Math.abs(wallPushUpShare({ ...push, elbows: 'bent' })!.share - bent)).toBeLessThan(0.001);
    },
  );

  it('refuses feet so near that no weight comes on the hands', () => {
    const near = wallPushUpRow.calculate({
      sex: 'male',
      statureM: 1.75,
      footDistanceM: 0.5,
      elbows: 'straight',
    });
    expect(near).toMatchObject({ ok: false, refused: [{ code: 'outside-validity' }] });
  });
});

describe('Lean-back row (Melrose and Dawes 2015, abstract seen)', () => {
  it('is the published share at the four angles [strength 78]', () => {
    const shares = [30, 45, 60, 75].map(
      (fromVerticalDeg) => resultOf(leanBackRowRow, { fromVerticalDeg }).shareOfBodyMass,
    );
    expect(shares).toEqual([0.3744, 0.5288, 0.6808, 0.7938]);
  });

  it('shows the fit beside it: 0.5572 at 45° [strength 79]', () => {
    expect(Math.abs(leanBackRowFit(45) - 0.5572)).toBeLessThan(0.0005);
  });

  it.each([29.9, 75.1])('refuses %f°, outside the measured angles', (fromVerticalDeg) => {
    const row = leanBackRowRow.calculate({ fromVerticalDeg });
    expect(row).toMatchObject({ ok: false, refused: [{ code: 'outside-validity' }] });
  });
});

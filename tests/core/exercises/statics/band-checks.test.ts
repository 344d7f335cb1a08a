import { describe, expect, it } from 'vitest';
import {
  bandCalibrationRow,
  bandForceRow,
  bandPointRow,
  checkCalibration,
} from '#core/exercises/statics/band.ts';
import { bandMomentRow } from '#core/exercises/statics/band-moment.ts';
import { resultOf } from './answered.ts';

const band = {
  firstElongationPercent: 100,
  firstForceN: 20.46,
  secondElongationPercent: 200,
  secondForceN: 29.8,
};

describe('Band by two-point calibration', () => {
  it('rises by 0.0934 N per percent between the points [strength 104]', () => {
    expect(resultOf(bandCalibrationRow, { ...band, restLengthM: 0.6 }).slopeNPerPercent).toBeCloseTo(
      0.0934,
      9,
    );
  });

  it('pulls 25.13 N at 150 % [strength 105]', () => {
    const { forceN } = resultOf(bandForceRow, { ...band, elongationPercent: 150 });
    expect(Math.abs(forceN - 25.13)).toBeLessThan(0.005);
  });

  it('takes no elongation under 25 or over 250 % [strength 106]', () => {
    const field = bandForceRow.input.find((entry) => entry.name === 'elongationPercent');
    expect(field).toMatchObject({ min: 25, max: 250 });
    for (const elongationPercent of [10, 300]) {
      const outcome = bandForceRow.calculate({ ...band, elongationPercent });
      expect(outcome).toMatchObject({ ok: false, refused: [{ code: 'outside-validity' }] });
    }
  });

  it.each([99.9, 200.1])('does not extend the line beyond its two points (%f %%)', (elongationPercent) => {
    const outcome = bandForceRow.calculate({ ...band, elongationPercent });
    expect(outcome).toMatchObject({ ok: false, refused: [{ code: 'outside-validity' }] });
  });

  it('calls 0.60 m stretched to 1.20 m an elongation of 100 % [strength 107]', () => {
    const point = resultOf(bandPointRow, { restLengthM: 0.6, stretchedLengthM: 1.2, hungKg: 1.5 });
    expect(point.elongationPercent).toBeCloseTo(100, 9);
  });

  it('is 15.57 N/m on a rest length of 0.60 m [strength 108]', () => {
    const { stiffnessNPerM } = resultOf(bandCalibrationRow, { ...band, restLengthM: 0.6 });
    expect(Math.abs(stiffnessNPerM - 15.57)).toBeLessThan(0.01);
  });

  it('takes 14.7100 N from a hung 1.5 kg [strength 109]', () => {
    const point = resultOf(bandPointRow, { restLengthM: 0.6, stretchedLengthM: 1.2, hungKg: 1.5 });
    expect(Math.abs(point.forceN - 14.71)).toBeLessThan(0.0005);
  });

  it('refuses points too near each other or a longer stretch that pulls less', () => {
    const near = { ...band, secondElongationPercent: 124.9 };
    expect(checkCalibration(near).map((refusal) => refusal.code)).toEqual(['inconsistent']);
    expect(checkCalibration({ ...band, secondElongationPercent: 125 })).toEqual([]);
    expect(checkCalibration({ ...band, secondForceN: 20.46 })).toHaveLength(1);
  });

  it('has nearly the same knee moment through the range while the tension doubles', () => {
    // Computed: flexion 90, 60, 45, 30, 0°; fastening 0.36 m, anchor 0.40 m behind and below, rest length 0.30 m.
    const expected = [
      [90, 34, 14.3, 5.1],
      [60, 96, 20.1, 6.7],
      [45, 124, 22.7, 6.9],
      [30, 148, 25, 6.6],
      [0, 186, 28.5, 4.8],
    ] as const;
    for (const [belowHorizontalDeg, elongation, force, moment] of expected) {
      const result = resultOf(bandMomentRow, {
        firstElongationPercent: 25,
        firstForceN: 20.46 - 75 * 0.0934,
        secondElongationPercent: 200,
        secondForceN: 29.8,
        restLengthM: 0.3,
        fasteningM: 0.36,
        belowHorizontalDeg: belowHorizontalDeg,
        anchorForwardM: -0.4,
        anchorUpM: -0.4,
      });
      expect(Math.abs(result.elongationPercent - elongation)).toBeLessThan(0.6);
      expect(Math.abs(result.forceN - force)).toBeLessThan(0.06);
      expect(Math.abs(result.momentNm - moment)).toBeLessThan(0.06);
    }
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandCalibrationRow, bandPointRow } from '#core/exercises/statics/band.ts';
import { convertibleUnits, convertUnit } from '#core/units/unit-conversion.ts';
import {
  kilogramsFromMilligrams,
  kilogramsFromPounds,
  milligrams,
  poundsFromKilograms,
} from '#core/units/units.ts';
import { holds } from '#tests/support/holds.ts';
import { codesOf, resultOf } from '../assessment/strength/result-of.ts';

type Unit = (typeof convertibleUnits)[number];
const convert = (value: number, from: Unit, to: Unit) => resultOf(convertUnit({ value, from, to })).value;

describe('bands, as far as units go', () => {
  it('0.60 m stretched to 1.20 m is 100 % elongation; 1.5 kg hung pulls 14.7100 N [strength 107] [strength 109]', () => {
    const point = resultOf(bandPointRow.calculate({ restLengthM: 0.6, stretchedLengthM: 1.2, hungKg: 1.5 }));
    expect(point.elongationPercent).toBeCloseTo(100, 9);
    expect(Math.abs(point.forceN - 14.71)).toBeLessThanOrEqual(0.0005);
    expect(convert(1.5, 'kgf', 'N')).toBeCloseTo(point.forceN, 12);
  });

  it('0.0934 N per percent on 0.60 m is 15.57 N/m [strength 108]', () => {
    const line = resultOf(bandCalibrationRow.calculate(bandCalibrationRow.example));
    expect(line.slopeNPerPercent).toBeCloseTo(0.0934, 9);
    expect(Math.abs(line.stiffnessNPerM - 15.57)).toBeLessThanOrEqual(0.01);
  });
});

describe('exact units (UCUM 2.2)', () => {
  it('one pound is 0.45359237 kg and ten are 4.5359237 kg, to the last digit [strength 110] [strength 115]', () => {
    expect(convert(1, '[lb_av]', 'kg')).toBe(0.45359237);
    expect(convert(10, '[lb_av]', 'kg')).toBe(4.5359237);
  });

  it('one kilogram is 2.204622622 pounds [strength 111]', () => {
    expect(convert(1, 'kg', '[lb_av]')).toBeCloseTo(2.204622622, 9);
  });

  it('one pound-force is 4.4482216152605 N, one kilogram-force 9.80665 N [strength 112] [strength 113]', () => {
    expect(convert(1, '[lbf_av]', 'N')).toBe(4.4482216152605);
    expect(convert(1, 'kgf', 'N')).toBe(9.80665);
  });

  it('one foot-pound is 1.3558179483314004 N·m [strength 114]', () => {
    const printed = Number('1.3558179483314004');
    expect(Math.abs(convert(1, '[lbf_av].[ft_i]', 'N.m') - printed)).toBeLessThanOrEqual(1e-15);
  });

  it('12.5 kg to pounds and back is 12.5 kg [strength 116]', () => {
    expect(Math.abs(kilogramsFromPounds(poundsFromKilograms(12.5)) - 12.5)).toBeLessThanOrEqual(1e-12);
  });

  it('lengths: a foot is twelve inches, an inch 2.54 cm', () => {
    expect(convert(1, '[ft_i]', '[in_i]')).toBeCloseTo(12, 12);
    expect(convert(1, '[in_i]', 'cm')).toBeCloseTo(2.54, 12);
  });

  it('every unit comes back to itself through every other of its quantity; mass never becomes force', () => {
    const unit = fc.constantFrom(...convertibleUnits);
    holds(fc.double({ min: 0, max: 1e6, noNaN: true }), unit, unit, (value, from, to) => {
      const there = convertUnit({ value, from, to });
      if (!there.ok) {
        expect(codesOf(there)).toEqual(['input.to inconsistent']);
        return;
      }
      const back = convert(there.result.value, to, from);
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1, value));
    });
    expect(convertUnit({ value: 1, from: 'kg', to: 'N' }).ok).toBe(false);
  });

  it('loads compared as whole milligrams come back unchanged for every gram', () => {
    const gram = fc.integer({ min: 0, max: 1_000_000 }).map((g) => g / 1000);
    holds(gram, (massKg) => kilogramsFromMilligrams(milligrams(massKg)) === massKg);
  });
});

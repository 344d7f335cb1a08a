/** Estimates of limb occlusion pressure against worked values. Arithmetic tolerance only. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holds, holdsIn } from '#tests/support/holds.ts';
import { ask, noteCodes, refusalsOf, resultOf } from '../row-answers.ts';

const id = 'limb-occlusion-pressure-estimate';

const graham = (
  systolicMmhg: number,
  diastolicMmhg: number,
  circumferenceCm: number,
  cuffWidthCm: number,
) => ({
  equation: 'graham',
  limb: 'leg',
  systolicMmhg,
  diastolicMmhg,
  circumferenceCm,
  cuffWidthCm,
});
const thigh = (circumferenceCm: number, systolicMmhg: number, ageYears: number, sex: string) => ({
  equation: 'thigh-18cm',
  limb: 'leg',
  circumferenceCm,
  cuffWidthCm: 18,
  systolicMmhg,
  ageYears,
  sex,
});
const padding = (systolicMmhg: number, paddingCoefficient: number, circumferenceCm?: number) => ({
  equation: 'tissue-padding',
  limb: 'arm',
  systolicMmhg,
  paddingCoefficient,
  ...(circumferenceCm === undefined ? {} : { circumferenceCm }),
});

describe('circumference over cuff width (Graham 1993; formula from memory, values computed)', () => {
  it.each([
    [1, graham(120, 80, 30, 10), 120.0],
    [2, graham(120, 80, 32, 12), 115.556],
    [3, graham(130, 80, 55, 18), 130.926],
    [4, graham(140, 85, 60, 11), 185.0],
  ])('gives the worked pressure [occlusion %i]', (_, input, expected) => {
    expect(resultOf(id, input).pressureMmhg).toBeCloseTo(expected as number, 2);
  });

  it('equals systolic pressure at three cuff widths around, less below and more above [occlusion 5]', () => {
    const pair = fc.record({
      systolic: fc.integer({ min: 90, max: 200 }),
      pulse: fc.integer({ min: 10, max: 60 }),
      width: fc.integer({ min: 5, max: 30 }),
      off: fc.integer({ min: 1, max: 4 }),
    });
    holdsIn(2000, pair, ({ systolic, pulse, width, off }) => {
      const at = (circumference: number) =>
        resultOf(id, graham(systolic, systolic - pulse, circumference, width)).pressureMmhg as number;
      expect(at(3 * width)).toBeCloseTo(systolic, 9);
      expect(at(3 * width - off)).toBeLessThan(systolic);
      expect(at(3 * width + off)).toBeGreaterThan(systolic);
    });
  });

  it('refuses a cuff or limb of no size and a diastolic pressure not below the systolic [occlusion 6]', () => {
    expect(refusalsOf(id, graham(120, 80, 30, 0))).toEqual(['input.cuffWidthCm too-low']);
    expect(refusalsOf(id, graham(120, 80, 0, 10))).toEqual(['input.circumferenceCm too-low']);
    expect(refusalsOf(id, graham(120, 120, 30, 10))).toEqual(['input.diastolicMmhg inconsistent']);
    expect(refusalsOf(id, graham(120, 121, 30, 10))).toEqual(['input.diastolicMmhg inconsistent']);
    expect(refusalsOf(id, graham(120, 119, 30, 10))).toEqual([]);
  });

  it('says that no error is known and that the formula was remembered', () => {
    expect(noteCodes(id, graham(120, 80, 30, 10))).toEqual(
      expect.arrayContaining(['estimate-only', 'error-not-known', 'from-memory']),
    );
    expect(resultOf(id, graham(120, 80, 30, 10))).not.toHaveProperty('errorMmhg');
  });

  it('asks for each measure it cannot do without, and reads none as zero', () => {
    expect(refusalsOf(id, { equation: 'graham', limb: 'leg', systolicMmhg: 120 })).toEqual([
      'input.diastolicMmhg missing',
      'input.circumferenceCm missing',
      'input.cuffWidthCm missing',
    ]);
  });
});

describe('thigh regression, 18 cm cuff (Rev Bras Med Esporte 2019;25:494, seen with coefficients)', () => {
  it.each([
    [7, thigh(55, 120, 23, 'male'), 166.235],
    [8, thigh(55, 120, 23, 'female'), 158.251],
    [9, thigh(60, 130, 30, 'male'), 181.636],
    [10, thigh(50, 110, 20, 'female'), 147.462],
  ])('gives the worked pressure [occlusion %i]', (_, input, expected) => {
    expect(resultOf(id, input).pressureMmhg).toBeCloseTo(expected as number, 3);
  });

  it('puts men 7.984 mmHg above women of the same measures [occlusion 8]', () => {
    const man = resultOf(id, thigh(55, 120, 23, 'male')).pressureMmhg as number;
    const woman = resultOf(id, thigh(55, 120, 23, 'female')).pressureMmhg as number;
    expect(man - woman).toBeCloseTo(7.984, 9);
  });

  it('warns far outside the age it was fitted on, with the figure still shown [occlusion 11]', () => {
    const old = thigh(58, 140, 65, 'female');
    expect(resultOf(id, old).pressureMmhg).toBeCloseTo(213.567, 3);
    expect(noteCodes(id, old)).toContain('outside-fit');
    // Fit: 23.23 ± 5.24 years; two deviations end at 33.71.
    expect(noteCodes(id, thigh(58, 140, 33.7, 'female'))).not.toContain('outside-fit');
    expect(noteCodes(id, thigh(58, 140, 33.72, 'female'))).toContain('outside-fit');
  });

  it('gives its error as 1.96 standard errors of 15.289 mmHg [occlusion 12]', () => {
    expect(Math.abs((resultOf(id, thigh(55, 120, 23, 'male')).errorMmhg as number) - 29.97)).toBeLessThan(
      0.01,
    );
  });

  it('is refused for another cuff width and for the arm [occlusion 13]', () => {
    expect(refusalsOf(id, { ...thigh(55, 120, 23, 'male'), cuffWidthCm: 17 })).toEqual([
      'input.cuffWidthCm outside-validity',
    ]);
    expect(refusalsOf(id, { ...thigh(55, 120, 23, 'male'), cuffWidthCm: 19 })).toEqual([
      'input.cuffWidthCm outside-validity',
    ]);
    expect(refusalsOf(id, { ...thigh(55, 120, 23, 'male'), limb: 'arm' })).toEqual([
      'input.limb outside-validity',
    ]);
  });
});

describe('tissue padding (Tuncali 2006; formula and range seen, table of coefficients not)', () => {
  it.each([
    [19, padding(120, 0.8), 162.5],
    [20, padding(140, 0.75), 200.0],
    [21, padding(110, 0.87), 137.931],
  ])('gives the worked pressure for a given coefficient [occlusion %i]', (_, input, expected) => {
    expect(resultOf(id, input).pressureMmhg).toBeCloseTo(expected as number, 3);
    expect(noteCodes(id, input)).toContain('coefficient-yours');
  });

  it('is refused outside 20 to 75 cm, and for a coefficient of 0 or over 1 [occlusion 22]', () => {
    expect(refusalsOf(id, padding(120, 0.8, 19))).toEqual(['input.circumferenceCm outside-validity']);
    expect(refusalsOf(id, padding(120, 0.8, 20))).toEqual([]);
    expect(refusalsOf(id, padding(120, 0.8, 75))).toEqual([]);
    expect(refusalsOf(id, padding(120, 0.8, 76))).toEqual(['input.circumferenceCm outside-validity']);
    expect(refusalsOf(id, padding(120, 0))).toEqual(['input.paddingCoefficient too-low']);
    expect(refusalsOf(id, padding(120, 1))).toEqual([]);
    expect(refusalsOf(id, padding(120, 1.01))).toEqual(['input.paddingCoefficient too-high']);
  });
});

describe('every estimate', () => {
  it('is labelled an estimate, never a measurement', () => {
    for (const input of [graham(120, 80, 30, 10), thigh(55, 120, 23, 'male'), padding(120, 0.8)]) {
      expect(noteCodes(id, input)).toContain('estimate-only');
    }
  });

  it('never falls when systolic pressure rises', () => {
    const measures = fc.record({
      equation: fc.constantFrom('graham', 'thigh-18cm', 'tissue-padding'),
      systolic: fc.integer({ min: 81, max: 250 }),
      rise: fc.integer({ min: 0, max: 49 }),
      circumference: fc.integer({ min: 20, max: 75 }),
    });
    holds(measures, ({ equation, systolic, rise, circumference }) => {
      const at = (systolicMmhg: number): number =>
        resultOf(id, {
          equation,
          limb: 'leg',
          systolicMmhg,
          diastolicMmhg: 80,
          circumferenceCm: circumference,
          cuffWidthCm: 18,
          ageYears: 40,
          sex: 'female',
          paddingCoefficient: 0.8,
        }).pressureMmhg as number;
      expect(at(systolic + rise)).toBeGreaterThanOrEqual(at(systolic));
    });
  });

  it('is refused under 18 years', () => {
    expect(ask(id, thigh(55, 120, 17, 'male')).ok).toBe(false);
    expect(ask(id, thigh(55, 120, 18, 'male')).ok).toBe(true);
  });
});

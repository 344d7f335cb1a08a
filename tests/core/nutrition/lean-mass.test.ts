import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyMassIndex } from '#core/nutrition/body-mass-index.ts';
import { boer } from '#core/nutrition/lean-mass/boer.ts';
import { james, jamesTurningPointKg } from '#core/nutrition/lean-mass/james.ts';
import { type LeanMassInput, leanMass } from '#core/nutrition/lean-mass/lean-mass.ts';
import { leanMassRangeRow } from '#core/nutrition/lean-mass/lean-mass-range.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { holds } from '#tests/support/holds.ts';
import { near } from './near.ts';

const formulas = ['boer', 'james', 'hume', 'janmahasatian'] as const;
type Four = readonly [boer: number, james: number, hume: number, janmahasatian: number];

const expectFour = (sex: 'female' | 'male', massKg: number, statureCm: number, expected: Four) =>
  formulas.forEach((formula, place) => {
    near(resultOf(leanMass({ formula, sex, massKg, statureCm })).leanMassKg, expected[place] as number, 0.01);
  });

describe('lean mass by Boer 1984, James 1976, Hume 1966 and Janmahasatian 2005, computed from the printed equations', () => {
  it('man, 80 kg, 180 cm [nutrition 40]', () => expectFour('male', 80, 180, [61.42, 62.72, 57.79, 61.73]));
  it('woman, 62 kg, 165 cm [nutrition 41]', () =>
    expectFour('female', 62, 165, [45.37, 45.44, 44.03, 40.09]));
  it('man, 110 kg, 178 cm [nutrition 42]', () => expectFour('male', 110, 178, [73.1, 72.12, 66.95, 71.92]));
  it('woman, 70 kg, 165 cm [nutrition 43]', () => expectFour('female', 70, 165, [47.39, 48.26, 46.4, 43.11]));
  it('man, 110 kg, 175 cm [nutrition 44]', () => expectFour('male', 110, 175, [72.3, 70.43, 65.93, 70.62]));

  it('Boer for a woman of 40 kg and 180 cm would be 46.92 kg, more than she weighs: refused [nutrition 45]', () => {
    near(boer.kilograms('female', 40, 180), 46.92, 0.005);
    expect(codesOf(leanMass({ formula: 'boer', sex: 'female', massKg: 40, statureCm: 180 }))).toEqual([
      'input.massKg outside-validity',
    ]);
  });

  it('James is highest at 131.6 kg for a man of 175 cm (index 43.0; women 36.1) and falls beyond [nutrition 46]', () => {
    near(jamesTurningPointKg('male', 175), 131.6, 0.1);
    near(bodyMassIndex(jamesTurningPointKg('male', 175), 175), 43, 0.1);
    near(bodyMassIndex(jamesTurningPointKg('female', 165), 165), 36.1, 0.1);
    const at = (massKg: number) => james.kilograms('male', massKg, 175);
    expect(at(131.6)).toBeGreaterThan(at(130));
    expect(at(131.6)).toBeGreaterThan(at(134));
  });

  it('70 kg with 30 % fat is 49.00 kg lean, an identity [nutrition 47]', () => {
    near(resultOf(leanMass({ formula: 'body-fat', massKg: 70, bodyFatPercent: 30 })).leanMassKg, 49, 0.01);
  });
  it('80 kg with 18 % fat is 65.60 kg lean, an identity [nutrition 48]', () => {
    near(resultOf(leanMass({ formula: 'body-fat', massKg: 80, bodyFatPercent: 18 })).leanMassKg, 65.6, 0.01);
  });
});

describe('a lean mass that the formula cannot know is refused', () => {
  const woman = { formula: 'janmahasatian', sex: 'female', statureCm: 160 } as const;
  it('body-mass index just under, at and over 15 and 50', () => {
    const ok = (index: number) => leanMass({ ...woman, massKg: index * 2.56 }).ok;
    expect([14.99, 15.001, 49.99, 50.01].map(ok)).toEqual([false, true, true, false]);
  });
  it('a share of body mass at or under 0.3', () => {
    const ok = (bodyFatPercent: number) => leanMass({ formula: 'body-fat', massKg: 100, bodyFatPercent }).ok;
    expect([69.9, 70, 70.1].map(ok)).toEqual([true, false, false]);
  });
  it('what a formula needs is asked for by name, all at once', () => {
    expect(codesOf(leanMass({ formula: 'boer', massKg: 70 }))).toEqual([
      'input.sex missing',
      'input.statureCm missing',
    ]);
    expect(codesOf(leanMass({ formula: 'body-fat', massKg: 70 }))).toEqual(['input.bodyFatPercent missing']);
  });
  it('James past its turning point is answered with a warning, before it without', () => {
    const codes = (massKg: number) => {
      const outcome = leanMass({ formula: 'james', sex: 'female', massKg, statureCm: 165 });
      return outcome.ok ? outcome.notes.map((note) => note.code) : ['refused'];
    };
    expect(codes(98)).toEqual([]);
    expect(codes(99)).toEqual(['past-turning-point']);
  });
  it('the clinic can move the bounds', () => {
    const heavy: LeanMassInput = { ...woman, massKg: 52 * 2.56 };
    expect(leanMass(heavy).ok).toBe(false);
    expect(leanMass(heavy, { 'lean-mass-bmi-max': 60 }).ok).toBe(true);
  });
});

describe('the four formulas side by side', () => {
  it('differ by 5.35 kg for the same woman of 62 kg and 165 cm', () => {
    const range = resultOf(leanMassRangeRow.calculate({ sex: 'female', massKg: 62, statureCm: 165 }));
    near(range.highKg - range.lowKg, 5.35, 0.02);
    expect(range.byFormula.map((row) => row.formula)).toEqual([...formulas]);
  });
  it('name the one left out with its reason, and refuse when none answers', () => {
    const thin = resultOf(leanMassRangeRow.calculate({ sex: 'female', massKg: 61, statureCm: 200 }));
    expect(thin.leftOut.map((row) => row.formula)).toEqual(['boer']);
    expect(leanMassRangeRow.calculate({ sex: 'male', massKg: 30, statureCm: 190 }).ok).toBe(false);
  });
});

describe('over generated adults', () => {
  const adult = fc.record({
    sex: fc.constantFrom('female' as const, 'male' as const),
    massKg: fc.double({ min: 35, max: 160, noNaN: true }),
    statureCm: fc.double({ min: 140, max: 210, noNaN: true }),
  });
  it('every answer is between 0.3 and the whole of body mass', () => {
    holds(fc.constantFrom(...formulas), adult, (formula, person) => {
      const outcome = leanMass({ formula, ...person });
      if (!outcome.ok) return true;
      const share = outcome.result.leanMassKg / person.massKg;
      return share > 0.3 && share < 1;
    });
  });
  it('more mass at the same stature never means less lean mass, James past its turning point apart', () => {
    holds(
      fc.constantFrom(...formulas),
      adult,
      fc.double({ min: 0.1, max: 20, noNaN: true }),
      (formula, person, more) => {
        const heavier = { ...person, massKg: person.massKg + more };
        if (formula === 'james' && heavier.massKg > jamesTurningPointKg(person.sex, person.statureCm))
          return true;
        const before = leanMass({ formula, ...person });
        const after = leanMass({ formula, ...heavier });
        return !before.ok || !after.ok || after.result.leanMassKg >= before.result.leanMassKg;
      },
    );
  });
});

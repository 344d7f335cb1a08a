/** What a record says of protein and energy equals the calculations it is made of; a lock leaves no target. */
import { describe, expect, it } from 'vitest';
import { lockAnswersOf } from '#core/nutrition/picture/answers-that-lock.ts';
import { adviceQuestions, adviceRefusals } from '#core/nutrition/picture/nutrition-advice.ts';
import type { NutritionFacts } from '#core/nutrition/picture/nutrition-facts.ts';
import { nutritionPicture } from '#core/nutrition/picture/nutrition-picture.ts';
import { nutritionDefaults } from '#core/nutrition/settings.ts';

const allNo = { kidneyDisease: 'no', dialysis: 'no', eatingOrWeightWorry: 'no', pregnancy: 'no' } as const;
const facts: NutritionFacts = {
  massKg: 70,
  statureCm: 165,
  bodyFatPercent: null,
  ageYears: 55,
  formulaSex: 'female',
  answers: allNo,
};
const of = (over: Partial<NutritionFacts> = {}, settings = nutritionDefaults) =>
  nutritionPicture({ ...facts, ...over }, settings);

describe('lean mass', () => {
  it('stands by all four formulas; Boer 1984 for a woman of 70 kg and 165 cm is 47.385 kg', () => {
    const { byFormula, lowKg, highKg } = of().leanMass;
    expect(byFormula.map(({ formula }) => formula)).toEqual(['boer', 'james', 'hume', 'janmahasatian']);
    // 0.252 × 70 + 0.473 × 165 − 48.3 (Boer 1984, second-hand)
    expect(byFormula[0]?.leanMassKg).toBeCloseTo(47.385, 6);
    expect(lowKg).toBe(Math.min(...byFormula.map(({ leanMassKg }) => leanMassKg)));
    expect(highKg).toBe(Math.max(...byFormula.map(({ leanMassKg }) => leanMassKg)));
  });

  it('of measured body fat stands before them: 30 % of 70 kg leaves 49 kg', () => {
    expect(of({ bodyFatPercent: 30 }).leanMass.byFormula[0]).toEqual({ formula: 'body-fat', leanMassKg: 49 });
  });
});

describe('protein', () => {
  it('by body mass is 1.4 to 2.0 g per kg at 65 and 1.0 to 1.2 beside it at 66 (Jäger 2017, Bauer 2013)', () => {
    const bases = (ageYears: number) => of({ ageYears }).protein.map(({ basis }) => basis);
    expect(bases(65)).toEqual(['lean-common', 'body-isn-sports']);
    expect(bases(66)).toEqual(['lean-common', 'body-older', 'body-older-unwell', 'body-isn-sports']);
    const older = of({ ageYears: 66 }).protein.find(({ basis }) => basis === 'body-older');
    expect([older?.lowG, older?.highG]).toEqual([70, 84]);
  });

  it('by lean mass goes from the lowest formula to the highest, by the clinic’s own figures', () => {
    const { protein, leanMass } = of({}, { ...nutritionDefaults, 'lean-protein-low': 1.2 });
    expect(protein[0]?.lowG).toBeCloseTo(1.2 * leanMass.lowKg!, 9);
    expect(protein[0]?.highG).toBeCloseTo(2.5 * leanMass.highKg!, 9);
  });

  it('at a meal is 0.4 to 0.55 g per kg (Schoenfeld and Aragon 2018)', () => {
    expect(of().meal?.lowG).toBeCloseTo(28, 9);
    expect(of().meal?.highG).toBeCloseTo(38.5, 9);
  });
});

describe('energy', () => {
  it('at rest is that of Mifflin 1990: 10 × 70 + 6.25 × 165 − 5 × 55 − 161 = 1295.25 kcal', () => {
    expect(of().energy?.restingKcal).toBeCloseTo(1295.25, 9);
  });

  it('over what is needed is none from the clinic’s body-mass index on: 25.7 at 25, and its range at 26', () => {
    const at = (bmi: number) => of({}, { ...nutritionDefaults, 'surplus-zero-from-bmi': bmi }).energy;
    expect(at(25)?.surplusHighKcal).toBe(0);
    expect([at(26)?.surplusLowKcal, at(26)?.surplusHighKcal]).toEqual([100, 200]);
  });
});

describe('a lock', () => {
  it.each([
    ['kidneyDisease', 'yes', 'kidney-disease'],
    ['kidneyDisease', 'not-known', 'kidney-disease'],
    ['dialysis', 'yes', 'dialysis'],
    ['eatingOrWeightWorry', 'yes', 'eating-or-weight-worry'],
    ['pregnancy', 'not-known', 'pregnancy'],
  ] as const)('by %s %s leaves no target of any kind', (question, answer, reason) => {
    const picture = of({ answers: { ...allNo, [question]: answer } });
    expect(picture.lockReasons).toEqual([reason]);
    expect([picture.protein, picture.meal, picture.energy]).toEqual([[], null, null]);
  });

  it('by underweight: a body-mass index of 18.4, and not at 18.5', () => {
    const at = (bmi: number) => of({ massKg: bmi * 1.65 ** 2 }).lockReasons;
    expect([at(18.4), at(18.5001)]).toEqual([['underweight'], []]);
  });

  it('by kidney disease alone names 0.8 and 1.3 g per kg for the talk; with another reason, or on dialysis, nothing', () => {
    const kidney = (over: object) => of({ answers: { ...allNo, kidneyDisease: 'yes', ...over } }).kidney;
    expect(kidney({})).toEqual({ ceilingG: 56, warnAboveG: 91 });
    expect(kidney({ pregnancy: 'yes' })).toBeNull();
    expect(kidney({ dialysis: 'yes' })).toBeNull();
  });
});

describe('what is missing', () => {
  it('is named, and no figure stands in its place', () => {
    const picture = of({ massKg: null, statureCm: null, formulaSex: null });
    expect(picture.missing).toEqual(['massKg', 'statureCm', 'formulaSex']);
    expect([picture.bodyMassIndex, picture.protein, picture.energy]).toEqual([null, [], null]);
  });

  it('of the questions is never taken for no: an unanswered sheet names all five', () => {
    expect(lockAnswersOf(null)).toEqual({});
    expect(of({ answers: {} }).notAsked).toEqual([
      'kidneyDisease',
      'singleKidney',
      'dialysis',
      'eatingOrWeightWorry',
      'pregnancy',
    ]);
  });

  it('“does not apply” to pregnancy reads as no', () => {
    const answers = [{ item: 'pregnancy-or-birth', answer: 'not-applicable' }] as never;
    expect(lockAnswersOf({ answers })).toEqual({ pregnancy: 'no' });
  });
});

describe('what is shown to the patient', () => {
  const wanted = {
    proteinLowG: 70,
    proteinHighG: 90,
    meals: 4,
    surplusKcal: null,
    words: null,
    restAnsweredNo: true,
  };
  const open = { lockReasons: [], notAsked: ['singleKidney'] } as const;

  it('is refused while something locks, while a question is open, and the wrong way round', () => {
    expect(adviceRefusals(wanted, open)).toEqual([]);
    const codes = (over: object, picture: object = open) =>
      adviceRefusals({ ...wanted, ...over }, picture as typeof open).map(({ field }) => field);
    expect(codes({}, { lockReasons: ['pregnancy'], notAsked: [] })).toEqual(['input.proteinLowG']);
    expect(codes({ restAnsweredNo: false })).toEqual(['input.restAnsweredNo']);
    expect(codes({ proteinHighG: 69 })).toEqual(['input.proteinHighG']);
    expect(codes({ proteinHighG: 70 })).toEqual([]);
  });

  it('is asked about under 56 g, the general minimum for 70 kg, and over the highest figure worked out', () => {
    const protein = [{ basis: 'body-isn-sports', lowG: 98, highG: 140, notes: [] }] as const;
    const rest = { protein, meal: null, energy: null };
    const asked = (low: number, high: number) =>
      adviceQuestions({ ...wanted, proteinLowG: low, proteinHighG: high }, 70, rest).length;
    expect([asked(55, 90), asked(56, 90), asked(57, 90)]).toEqual([1, 0, 0]);
    expect([asked(70, 139), asked(70, 140), asked(70, 141)]).toEqual([0, 0, 1]);
  });

  it('is asked about over 39 g at one meal, and over the clinic’s energy for this patient: 0 where the joint is loaded', () => {
    const picture = of();
    const asked = (over: object) => adviceQuestions({ ...wanted, ...over }, 70, picture).length;
    expect([78, 79].map((grams) => asked({ proteinLowG: grams, meals: 2 }))).toEqual([0, 1]);
    expect([0, 1].map((surplusKcal) => asked({ surplusKcal }))).toEqual([0, 1]);
  });
});

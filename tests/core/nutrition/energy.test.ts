import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyAvailabilityRow } from '#core/nutrition/energy-availability.ts';
import { type EnergySurplusInput, energySurplus } from '#core/nutrition/energy-surplus.ts';
import { restingEnergy } from '#core/nutrition/resting-energy/resting-energy.ts';
import { totalEnergyRow } from '#core/nutrition/total-energy.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { holds } from '#tests/support/holds.ts';
import { near } from './near.ts';

const fromBody = ['mifflin', 'mifflin-full', 'harris-benedict', 'roza-shizgal'] as const;

const expectFour = (
  sex: 'female' | 'male',
  [massKg, statureCm, ageYears]: readonly [number, number, number],
  expected: readonly number[],
) =>
  fromBody.forEach((formula, place) => {
    const outcome = restingEnergy({ formula, sex, massKg, statureCm, ageYears });
    near(resultOf(outcome).kcalPerDay, expected[place] as number, 0.1);
  });

const expectFromLean = (leanMassKg: number, katch: number, cunningham: number) => {
  near(resultOf(restingEnergy({ formula: 'katch-mcardle', leanMassKg })).kcalPerDay, katch, 0.1);
  near(resultOf(restingEnergy({ formula: 'cunningham-1980', leanMassKg })).kcalPerDay, cunningham, 0.1);
};

describe('resting energy: Mifflin 1990 simple and full, Harris-Benedict 1919 (full digits from memory), Roza-Shizgal 1984', () => {
  it('man, 80 kg, 180 cm, 40 years [nutrition 49]', () => {
    expectFour('male', [80, 180, 40], [1730, 1732.4, 1797, 1796.9]);
  });
  it('woman, 70 kg, 165 cm, 65 years [nutrition 50]', () => {
    expectFour('female', [70, 165, 65], [1245.25, 1249.75, 1325.8, 1324.6]);
  });
  it('woman, 62 kg, 165 cm, 30 years [nutrition 51]', () => {
    expectFour('female', [62, 165, 30], [1340.25, 1342.03, 1412.9, 1402.2]);
  });
});

describe('resting energy from lean mass: Katch-McArdle and Cunningham 1980', () => {
  it('49 kg lean [nutrition 52]', () => expectFromLean(49, 1428.4, 1578));
  it('60 kg lean [nutrition 53]', () => expectFromLean(60, 1666, 1820));
  it('70 kg lean [nutrition 54]', () => expectFromLean(70, 1882, 2040));

  it('asks for every missing figure by name', () => {
    expect(codesOf(restingEnergy({ formula: 'katch-mcardle', massKg: 70 }))).toEqual([
      'input.leanMassKg missing',
    ]);
    expect(codesOf(restingEnergy({ formula: 'mifflin', sex: 'male' }))).toEqual([
      'input.massKg missing',
      'input.statureCm missing',
      'input.ageYears missing',
    ]);
  });
  it('says when the person is outside the ages of the sample (19 to 78) and when figures are from memory', () => {
    const codes = (formula: 'mifflin' | 'harris-benedict', ageYears: number) => {
      const outcome = restingEnergy({ formula, sex: 'female', massKg: 60, statureCm: 160, ageYears });
      return outcome.ok ? outcome.notes.map((note) => note.code) : [];
    };
    expect([78, 79].map((age) => codes('mifflin', age))).toEqual([[], ['outside-sample-age']]);
    expect(codes('harris-benedict', 50)).toEqual(['from-memory']);
  });
});

describe('energy of a day', () => {
  it('1245.25 kcal at rest times 1.375 is 1712.2 kcal [nutrition 55]', () => {
    const day = resultOf(totalEnergyRow.calculate({ restingKcalPerDay: 1245.25, activity: 'light' }));
    near(day.kcalPerDay, 1712.2, 0.1);
  });
  it('the five factors are 1.2, 1.375, 1.55, 1.725 and 1.9, common practice without a primary source', () => {
    const factor = (activity: 'sedentary' | 'light' | 'moderate' | 'hard' | 'very-hard') =>
      resultOf(totalEnergyRow.calculate({ restingKcalPerDay: 1000, activity })).factor;
    expect((['sedentary', 'light', 'moderate', 'hard', 'very-hard'] as const).map(factor)).toEqual([
      1.2, 1.375, 1.55, 1.725, 1.9,
    ]);
  });
  it('energy availability of 1800 less 300 kcal over 50 kg is 30.0, and 30 itself is not low [nutrition 82]', () => {
    const at = (intakeKcalPerDay: number) =>
      resultOf(
        energyAvailabilityRow.calculate({ intakeKcalPerDay, exerciseKcalPerDay: 300, leanMassKg: 50 }),
      );
    near(at(1800).kcalPerKgLeanPerDay, 30, 0.1);
    expect([1799, 1800, 1801].map((intake) => at(intake).low)).toEqual([true, false, false]);
  });
});

describe('energy surplus beside the published figures', () => {
  const person: EnergySurplusInput = {
    maintenanceKcalPerDay: 2000,
    massKg: 70,
    statureCm: 175,
    jointDisease: false,
  };
  const of = (changes: Partial<EnergySurplusInput>) => resultOf(energySurplus({ ...person, ...changes }));

  it('Iraki 2019, 10 to 20 % of 2000 kcal, is 200 to 400 kcal [nutrition 63]', () => {
    const published = of({}).published[0];
    near(published?.lowKcal, 200, 0.1);
    near(published?.highKcal, 400, 0.1);
  });
  it('Slater 2019, 1500 to 2000 kJ, is 358.5 to 478.0 kcal at 4.184 kJ [nutrition 64]', () => {
    const published = of({}).published[1];
    near(published?.lowKcal, 358.5, 0.1);
    near(published?.highKcal, 478, 0.1);
  });
  it('Iraki 2019, 0.25 to 0.5 % of 70 kg a week, is 0.175 to 0.350 kg [nutrition 65]', () => {
    near(of({}).publishedWeeklyGainLowKg, 0.175, 0.001);
    near(of({}).publishedWeeklyGainHighKg, 0.35, 0.001);
  });
  it('common practice of 100 to 200 kcal is given, and said to lie under both', () => {
    const outcome = energySurplus(person);
    expect(of({})).toMatchObject({ lowKcal: 100, highKcal: 200, locked: false });
    expect(outcome.ok && outcome.notes.map((note) => note.code)).toContain('under-published-ranges');
  });
  it('joint disease with an index of 25 or more starts at none; 24.9, or no joint disease, does not', () => {
    const high = (massKg: number, jointDisease: boolean) =>
      of({ massKg, statureCm: 200, jointDisease }).highKcal;
    expect([high(99.6, true), high(100, true), high(100.4, true), high(110, false)]).toEqual([
      200, 0, 0, 200,
    ]);
  });
  it('underweight, kidney disease, a worry about eating or pregnancy, or not knowing, give no surplus', () => {
    const locked: Partial<EnergySurplusInput>[] = [
      { massKg: 50 },
      { egfr: 59.9 },
      { kidneyDisease: 'yes' },
      { eatingOrWeightWorry: 'not-known' },
      { pregnancy: 'yes' },
    ];
    for (const change of locked) {
      expect(of(change)).toMatchObject({
        lowKcal: null,
        highKcal: null,
        locked: true,
        published: [],
        publishedWeeklyGainHighKg: null,
      });
    }
  });
});

describe('over generated adults', () => {
  it('more mass means more energy at rest and more age less, in every equation from the body', () => {
    holds(
      fc.constantFrom(...fromBody),
      fc.constantFrom('female' as const, 'male' as const),
      fc.double({ min: 40, max: 150, noNaN: true }),
      fc.double({ min: 140, max: 200, noNaN: true }),
      fc.double({ min: 18, max: 90, noNaN: true }),
      (formula, sex, massKg, statureCm, ageYears) => {
        const kcal = (mass: number, age: number) =>
          resultOf(restingEnergy({ formula, sex, massKg: mass, statureCm, ageYears: age })).kcalPerDay;
        const here = kcal(massKg, ageYears);
        return kcal(massKg + 1, ageYears) > here && kcal(massKg, ageYears + 1) < here && here > 0;
      },
    );
  });
});

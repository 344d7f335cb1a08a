import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { creatinineConversionRow } from '#core/nutrition/creatinine-conversion.ts';
import { egfr, egfrRow, kidneyStage } from '#core/nutrition/egfr.ts';
import { kidneyLockRow } from '#core/nutrition/kidney-lock.ts';
import { nutritionLockRow } from '#core/nutrition/nutrition-lock.ts';
import { resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { holds } from '#tests/support/holds.ts';
import { near } from './near.ts';

type Person = readonly [sex: 'female' | 'male', ageYears: number, creatinineMgDl: number];

const expectRate = ([sex, ageYears, creatinineMgDl]: Person, rate: number, stage: string) => {
  const result = resultOf(egfrRow.calculate({ sex, ageYears, creatinineMgDl }));
  near(result.egfr, rate, 0.01);
  expect(result.stage).toBe(stage);
};

describe('kidney function by CKD-EPI 2021 (Inker and others, as printed by a kidney foundation)', () => {
  it('woman of 55, 0.9 mg/dL: 75.50, G2 [nutrition 66]', () => expectRate(['female', 55, 0.9], 75.5, 'G2'));
  it('man of 60, 1.0 mg/dL: 86.16, G2 [nutrition 67]', () => expectRate(['male', 60, 1], 86.16, 'G2'));
  it('woman of 70, 1.4 mg/dL: 40.47, G3b [nutrition 68]', () =>
    expectRate(['female', 70, 1.4], 40.47, 'G3b'));
  it('man of 50, 0.8 mg/dL: 107.82, G1 [nutrition 69]', () => expectRate(['male', 50, 0.8], 107.82, 'G1'));
  it('man of 75, 2.6 mg/dL: 24.94, G4 [nutrition 70]', () => expectRate(['male', 75, 2.6], 24.94, 'G4'));
  it('woman of 30, 0.6 mg/dL: 123.76, G1 [nutrition 71]', () =>
    expectRate(['female', 30, 0.6], 123.76, 'G1'));
  it('woman of 65, 2.0 mg/dL: 27.21, G4 [nutrition 72]', () => expectRate(['female', 65, 2], 27.21, 'G4'));
  it('man of 40, 0.9 mg/dL: 110.73, G1 [nutrition 73]', () => expectRate(['male', 40, 0.9], 110.73, 'G1'));
  it('woman of 40, 0.7 mg/dL: 112.05, G1 [nutrition 74]', () =>
    expectRate(['female', 40, 0.7], 112.05, 'G1'));

  it('100 umol/L is 1.131 mg/dL, dividing by 88.42 from memory [nutrition 75]', () => {
    near(
      resultOf(creatinineConversionRow.calculate({ creatinineUmolPerL: 100 })).creatinineMgDl,
      1.131,
      0.001,
    );
  });

  it('stages under, at and over each bound (90, 60, 45, 30, 15), cut on the unrounded value', () => {
    expect([89.99, 90, 90.01].map(kidneyStage)).toEqual(['G2', 'G1', 'G1']);
    expect([59.99, 60, 60.01].map(kidneyStage)).toEqual(['G3a', 'G2', 'G2']);
    expect([44.99, 45, 45.01].map(kidneyStage)).toEqual(['G3b', 'G3a', 'G3a']);
    expect([29.99, 30, 30.01].map(kidneyStage)).toEqual(['G4', 'G3b', 'G3b']);
    expect([14.99, 15, 15.01].map(kidneyStage)).toEqual(['G5', 'G4', 'G4']);
  });
  it('is always called an estimate', () => {
    const outcome = egfrRow.calculate({ sex: 'male', ageYears: 60, creatinineMgDl: 1 });
    expect(outcome.ok && outcome.notes.map((note) => note.code)).toEqual(['estimate']);
  });
  it('falls with creatinine and with age, without a jump at the knee', () => {
    holds(
      fc.constantFrom('female' as const, 'male' as const),
      fc.double({ min: 18, max: 100, noNaN: true }),
      fc.double({ min: 0.2, max: 15, noNaN: true }),
      (sex, age, creatinine) => {
        const here = egfr(sex, age, creatinine);
        const step = here - egfr(sex, age, creatinine + 1e-6);
        return step > 0 && step < 0.01 && egfr(sex, age + 1, creatinine) < here;
      },
    );
  });
});

describe('the kidney lock', () => {
  const lock = (given: Parameters<typeof kidneyLockRow.calculate>[0]) =>
    resultOf(kidneyLockRow.calculate(given));
  it('opens on each of its reasons and on not knowing; a plain no does not lock', () => {
    expect(lock({ massKg: 70, egfr: 59.9 }).reasons).toEqual(['egfr-under-60']);
    expect(lock({ massKg: 70, kidneyDisease: 'yes' }).reasons).toEqual(['kidney-disease']);
    expect(lock({ massKg: 70, singleKidney: 'not-known' }).reasons).toEqual(['single-kidney']);
    expect(lock({ massKg: 70, dialysis: 'yes' }).reasons).toEqual(['dialysis']);
    expect(lock({ massKg: 70, kidneyDisease: 'no', egfr: 60 })).toMatchObject({
      locked: false,
      ceilingToDiscussG: null,
    });
  });
  it('shows 0.8 and 1.3 g per kg for the talk, and nothing on dialysis', () => {
    const shown = lock({ massKg: 70, egfr: 45 });
    near(shown.ceilingToDiscussG, 56, 0.1);
    near(shown.warnAboveG, 91, 0.1);
    expect(lock({ massKg: 70, egfr: 10, dialysis: 'yes' })).toMatchObject({
      ceilingToDiscussG: null,
      warnAboveG: null,
    });
  });
});

describe('when nutrition targets stay closed', () => {
  const lock = (given: Parameters<typeof nutritionLockRow.calculate>[0]) =>
    resultOf(nutritionLockRow.calculate(given));
  const allNo = {
    kidneyDisease: 'no',
    singleKidney: 'no',
    dialysis: 'no',
    eatingOrWeightWorry: 'no',
    pregnancy: 'no',
  } as const;
  it('an index under 18.5 locks, 18.5 does not', () => {
    const locked = (bodyMassIndex: number) => lock({ ...allNo, bodyMassIndex }).locked;
    expect([18.49, 18.5, 18.51].map(locked)).toEqual([true, false, false]);
  });
  it('under 18 years locks, 18 does not', () => {
    expect([17.9, 18].map((ageYears) => lock({ ...allNo, ageYears }).locked)).toEqual([true, false]);
  });
  it('each single answer of yes or not known locks, whatever the others say', () => {
    const questions = [...Object.keys(allNo), 'malnutritionFlag'];
    for (const question of questions) {
      for (const given of ['yes', 'not-known']) {
        expect(lock({ ...allNo, [question]: given }), `${question} ${given}`).toMatchObject({
          locked: true,
          showToPatient: false,
        });
      }
    }
    expect(lock(allNo)).toEqual({ locked: false, reasons: [], notAsked: [], showToPatient: true });
  });
  it('a question not asked keeps targets from the patient and is named', () => {
    const { pregnancy: _, ...others } = allNo;
    expect(lock(others)).toMatchObject({ locked: false, notAsked: ['pregnancy'], showToPatient: false });
  });
});

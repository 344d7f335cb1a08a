import { describe, expect, it } from 'vitest';
import { bodyMassBand, bodyMassIndexRow } from '#core/nutrition/body-mass-index.ts';
import { espenUndernutrition } from '#core/nutrition/espen-undernutrition.ts';
import { glimPhenotype, glimPhenotypeRow } from '#core/nutrition/glim-phenotype.ts';
import { weightChangeRow } from '#core/nutrition/weight-change.ts';
import { resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { near } from './near.ts';

const index = (massKg: number, statureCm: number) =>
  resultOf(bodyMassIndexRow.calculate({ massKg, statureCm })).bodyMassIndex;

describe('body-mass index: kilograms over metres squared', () => {
  it('70 kg at 175 cm is 22.86 by the formula [nutrition 36]', () => near(index(70, 175), 22.86, 0.01));
  it('50 kg at 165 cm is 18.37 by the formula [nutrition 37]', () => near(index(50, 165), 18.37, 0.01));
  it('95 kg at 170 cm is 32.87 by the formula [nutrition 38]', () => near(index(95, 170), 32.87, 0.01));
  it('45 kg at 160 cm is 17.58 by the formula [nutrition 39]', () => near(index(45, 160), 17.58, 0.01));

  it('under, at and over each bound, the bound belongs to the upper band (18.5, 25, 30)', () => {
    expect([18.49, 18.5, 18.51].map(bodyMassBand)).toEqual(['underweight', 'middle', 'middle']);
    expect([24.99, 25, 25.01].map(bodyMassBand)).toEqual(['middle', 'overweight', 'overweight']);
    expect([29.99, 30, 30.01].map(bodyMassBand)).toEqual(['overweight', 'obese', 'obese']);
  });
});

describe('malnutrition flag from body mass, GLIM 2019 as restated on a criteria page', () => {
  const flag = (bodyMassIndex: number, ageYears: number, lossPercentSixMonths?: number) =>
    glimPhenotype({ bodyMassIndex, ageYears, lossPercentSixMonths });

  it('index 19.5 at 65 years without loss: low index [nutrition 76]', () => {
    expect(flag(19.5, 65, 0)).toEqual({ bodyMassIndexFlag: 'low', lossFlag: 'none', flagged: true });
  });
  it('index 21.5 at 72 years without loss: low index [nutrition 77]', () => {
    expect(flag(21.5, 72, 0)).toEqual({ bodyMassIndexFlag: 'low', lossFlag: 'none', flagged: true });
  });
  it('index 18.0 at 40 years with 6 % lost: loss, and the index severe [nutrition 78]', () => {
    expect(flag(18, 40, 6)).toEqual({ bodyMassIndexFlag: 'severe', lossFlag: 'loss', flagged: true });
  });
  it('index 23 at 50 years with exactly 5 % lost: nothing [nutrition 79]', () => {
    expect(flag(23, 50, 5)).toEqual({ bodyMassIndexFlag: 'none', lossFlag: 'none', flagged: false });
  });
  it('index 23 at 50 years with 5.1 % lost: loss [nutrition 80]', () => {
    expect(flag(23, 50, 5.1)).toEqual({ bodyMassIndexFlag: 'none', lossFlag: 'loss', flagged: true });
  });
  it('index 22 at exactly 70 years without loss: nothing [nutrition 81]', () => {
    expect(flag(22, 70, 0)).toEqual({ bodyMassIndexFlag: 'none', lossFlag: 'none', flagged: false });
  });

  it('a loss nobody asked about is not known, and never a clean answer', () => {
    expect(flag(23, 50)).toEqual({ bodyMassIndexFlag: 'none', lossFlag: 'not-known', flagged: null });
    expect(flag(19, 50).flagged).toBe(true);
  });
  it('the older cut-off begins at 70 and severity is cut at 18.5 and 20, 10 %', () => {
    expect([69.9, 70].map((age) => flag(21, age, 0).bodyMassIndexFlag)).toEqual(['none', 'low']);
    expect([18.49, 18.5].map((at) => flag(at, 50, 0).bodyMassIndexFlag)).toEqual(['severe', 'low']);
    expect([19.99, 20].map((at) => flag(at, 75, 0).bodyMassIndexFlag)).toEqual(['severe', 'low']);
    expect([10, 10.1].map((loss) => flag(23, 50, loss).lossFlag)).toEqual(['loss', 'severe']);
  });
  it('more than 10 % over a longer time counts, 10 % does not', () => {
    const longer = (lossPercentLonger: number) =>
      glimPhenotype({ bodyMassIndex: 23, ageYears: 50, lossPercentSixMonths: 0, lossPercentLonger }).lossFlag;
    expect([10, 10.1].map(longer)).toEqual(['none', 'loss']);
  });
  it('Asian cut-offs are 18.5 and 20 and carry no grading, since none was seen', () => {
    const asia = (bodyMassIndex: number, ageYears: number) =>
      glimPhenotype({ bodyMassIndex, ageYears, lossPercentSixMonths: 0, cutOffs: 'asia' }).bodyMassIndexFlag;
    expect([asia(18.49, 50), asia(18.5, 50), asia(19.99, 70), asia(20, 70)]).toEqual([
      'low',
      'none',
      'low',
      'none',
    ]);
    expect(asia(15, 50)).toBe('low');
  });
  it('says that it is a flag and no diagnosis', () => {
    const outcome = glimPhenotypeRow.calculate({ bodyMassIndex: 19, ageYears: 60 });
    expect(outcome.ok && outcome.notes.map((note) => note.code)).toEqual(['flag-only']);
  });
});

describe('undernutrition by the ESPEN consensus of 2015 (PMC9228435 table 6)', () => {
  const base = { bodyMassIndex: 19.5, ageYears: 60 } as const;
  it('an index under 18.5 is enough; 18.5 is not', () => {
    expect(espenUndernutrition({ ...base, bodyMassIndex: 18.49 })).toBe(true);
    expect(
      espenUndernutrition({ ...base, bodyMassIndex: 18.5, lossPercentThreeMonths: 0, lossPercentAnyTime: 0 }),
    ).toBe(false);
  });
  it('loss needs a low index or a low fat-free index beside it', () => {
    expect(espenUndernutrition({ ...base, lossPercentThreeMonths: 5.1 })).toBe(true);
    expect(espenUndernutrition({ ...base, lossPercentThreeMonths: 5, lossPercentAnyTime: 10 })).toBe(false);
    const heavy = { bodyMassIndex: 24, ageYears: 60, lossPercentAnyTime: 10.1 } as const;
    expect(espenUndernutrition({ ...heavy, sex: 'female', fatFreeMassIndex: 14.9 })).toBe(true);
    expect(espenUndernutrition({ ...heavy, sex: 'female', fatFreeMassIndex: 15 })).toBe(false);
    expect(espenUndernutrition({ ...heavy, sex: 'male', fatFreeMassIndex: 16.9 })).toBe(true);
  });
  it('stays open when the answer that would settle it is missing', () => {
    expect(espenUndernutrition(base)).toBe(null);
    expect(espenUndernutrition({ bodyMassIndex: 24, ageYears: 60, lossPercentAnyTime: 11 })).toBe(null);
  });
});

describe('change of body mass', () => {
  it('74 kg to 70 kg is a loss of 5.41 % of the earlier mass, an identity [nutrition 83]', () => {
    near(resultOf(weightChangeRow.calculate({ earlierKg: 74, laterKg: 70 })).lossPercent, 5.41, 0.01);
  });
  it('a gain is a loss under zero', () => {
    near(resultOf(weightChangeRow.calculate({ earlierKg: 70, laterKg: 77 })).lossPercent, -10, 1e-9);
  });
});

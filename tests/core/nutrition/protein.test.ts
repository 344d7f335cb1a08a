import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proteinPerMealRow } from '#core/nutrition/protein-per-meal.ts';
import { proteinPlateauRow } from '#core/nutrition/protein-plateau.ts';
import { type ProteinTargetInput, proteinTarget } from '#core/nutrition/protein-target.ts';
import { codesOf, resultOf } from '#tests/core/assessment/strength/result-of.ts';
import { holds } from '#tests/support/holds.ts';
import { near } from './near.ts';

const person = { massKg: 70, ageYears: 40 } as const;
const target = (given: Partial<ProteinTargetInput> & Pick<ProteinTargetInput, 'basis'>) =>
  resultOf(proteinTarget({ ...person, ...given }));
const notes = (given: Partial<ProteinTargetInput> & Pick<ProteinTargetInput, 'basis'>) => {
  const outcome = proteinTarget({ ...person, ...given });
  return outcome.ok ? outcome.notes.map((note) => note.code) : ['refused'];
};

describe('protein a day on each published basis', () => {
  it('ISSN 2017: 1.4 to 2.0 g/kg of 70 kg is 98.0 to 140.0 g [nutrition 56]', () => {
    near(target({ basis: 'body-isn-sports' }).lowG, 98, 0.1);
    near(target({ basis: 'body-isn-sports' }).highG, 140, 0.1);
  });
  it('Morton 2018: no further gain seen beyond 113.4 g (72.1 to 154.0) for 70 kg [nutrition 57]', () => {
    const plateau = resultOf(proteinPlateauRow.calculate({ massKg: 70 }));
    near(plateau.plateauG, 113.4, 0.1);
    near(plateau.lowG, 72.1, 0.1);
    near(plateau.highG, 154, 0.1);
  });
  it('PROT-AGE 2013 and ESPEN 2014: over 65, 1.0 to 1.2 g/kg of 70 kg is 70.0 to 84.0 g [nutrition 58]', () => {
    const older = target({ basis: 'body-older', ageYears: 70 });
    near(older.lowG, 70, 0.1);
    near(older.highG, 84, 0.1);
  });
  it('ESPEN 2014: older and unwell, 1.2 to 1.5 g/kg of 70 kg is 84 to 105 g', () => {
    const unwell = target({ basis: 'body-older-unwell', ageYears: 70 });
    near(unwell.lowG, 84, 0.1);
    near(unwell.highG, 105, 0.1);
  });
  it('KDIGO 2024: a filtration rate of 45 locks; 56.0 g to discuss, warned above 91.0 g, referred [nutrition 59]', () => {
    const kidney = target({ basis: 'body-isn-sports', egfr: 45 });
    expect(kidney.locked).toBe(true);
    near(kidney.lowG, 56, 0.1);
    near(kidney.highG, 56, 0.1);
    near(kidney.warnAboveG, 91, 0.1);
    expect(notes({ basis: 'body-isn-sports', egfr: 45 })).toContain('refer-kidney');
  });
  it('common practice without a source: 49 kg lean of 70 kg is 49.0 to 122.5 g, under 56 g at the low end, and said [nutrition 60]', () => {
    const lean = target({ basis: 'lean-common', leanMassKg: 49 });
    near(lean.lowG, 49, 0.1);
    near(lean.highG, 122.5, 0.1);
    near(lean.lowGPerKgBody, 0.7, 0.001);
    near(lean.highGPerKgBody, 1.75, 0.001);
    near(lean.generalMinimumG, 56, 0.1);
    expect(notes({ basis: 'lean-common', leanMassKg: 49 })).toEqual(
      expect.arrayContaining(['under-general-minimum', 'common-practice']),
    );
  });
});

describe('protein at each meal (Schoenfeld and Aragon 2018)', () => {
  const meal = resultOf(proteinPerMealRow.calculate({ massKg: 70, meals: 4 }));
  it('0.4 g/kg of 70 kg at four meals is 28.0 g each and 112.0 g a day [nutrition 61]', () => {
    near(meal.lowGPerMeal, 28, 0.1);
    near(meal.lowGPerDay, 112, 0.1);
  });
  it('0.55 g/kg of 70 kg at four meals is 38.5 g each and 154.0 g a day [nutrition 62]', () => {
    near(meal.highGPerMeal, 38.5, 0.1);
    near(meal.highGPerDay, 154, 0.1);
  });
  it('kidney disease closes it too', () => {
    const locked = resultOf(proteinPerMealRow.calculate({ massKg: 70, meals: 4, egfr: 45 }));
    expect(locked).toMatchObject({ locked: true, lowGPerMeal: null, highGPerDay: null });
  });
});

describe('what is said beside a protein target', () => {
  it('under the general minimum: just under, at and over 0.8 g per kg body mass', () => {
    const codes = (leanMassKg: number) => notes({ basis: 'lean-common', leanMassKg });
    expect(codes(55.9)).toContain('under-general-minimum');
    expect(codes(56)).not.toContain('under-general-minimum');
    expect(codes(56.1)).not.toContain('under-general-minimum');
  });
  it('over 65 a low end under 1.0 g/kg is said; at 65 it is not', () => {
    const codes = (ageYears: number) => notes({ basis: 'lean-common', leanMassKg: 60, ageYears });
    expect(codes(65)).not.toContain('under-older-figure');
    expect(codes(66)).toContain('under-older-figure');
  });
  it('the older basis at 65 or younger is said to be outside its source', () => {
    expect(notes({ basis: 'body-older', ageYears: 65 })).toContain('outside-source-age');
    expect(notes({ basis: 'body-older', ageYears: 66 })).not.toContain('outside-source-age');
  });
  it('figures per kg body mass are said to overshoot from an index of 30', () => {
    const codes = (massKg: number) => notes({ basis: 'body-isn-sports', massKg, statureCm: 200 });
    expect(codes(119.9)).not.toContain('overshoots-in-obesity');
    expect(codes(120)).toContain('overshoots-in-obesity');
  });
  it('lock questions that were not asked are named, those answered no are not', () => {
    const outcome = proteinTarget({
      ...person,
      basis: 'body-isn-sports',
      pregnancy: 'no',
      kidneyDisease: 'no',
    });
    const text = outcome.ok ? (outcome.notes.find((note) => note.code === 'not-asked')?.text ?? '') : '';
    expect(text).toContain('singleKidney');
    expect(text).not.toContain('pregnancy');
  });
  it('lean mass is asked for where it is needed, and refused when not under body mass', () => {
    expect(codesOf(proteinTarget({ ...person, basis: 'lean-common' }))).toEqual(['input.leanMassKg missing']);
    expect(codesOf(proteinTarget({ ...person, basis: 'lean-common', leanMassKg: 70 }))).toEqual([
      'input.leanMassKg inconsistent',
    ]);
  });
});

describe('protein locks', () => {
  it('a filtration rate just under 60 locks, 60 does not', () => {
    const locked = (egfr: number) => target({ basis: 'body-isn-sports', egfr }).locked;
    expect([59.9, 60, 60.1].map(locked)).toEqual([true, false, false]);
  });
  it('the kidney basis is always locked', () => {
    expect(target({ basis: 'kidney' })).toMatchObject({ locked: true, lockReasons: ['kidney-basis'] });
  });
  it('dialysis shows no figure at all', () => {
    expect(target({ basis: 'kidney', dialysis: 'yes' })).toMatchObject({
      lowG: null,
      highG: null,
      warnAboveG: null,
    });
    expect(notes({ basis: 'kidney', dialysis: 'yes' })).toContain('dialysis');
  });
  it('underweight, a worry about eating and pregnancy show no figure, with or without kidney disease', () => {
    const changes: Partial<ProteinTargetInput>[] = [
      { statureCm: 200 },
      { eatingOrWeightWorry: 'yes' },
      { eatingOrWeightWorry: 'not-known' },
      { pregnancy: 'yes' },
      { pregnancy: 'not-known', egfr: 45 },
    ];
    for (const change of changes) {
      const given = { basis: 'body-isn-sports', ...change } as const;
      expect(target(given)).toMatchObject({ locked: true, lowG: null, highG: null, generalMinimumG: null });
      expect(notes(given)).toContain('refer-clinician');
      expect(notes(given).includes('refer-kidney')).toBe('egfr' in change);
    }
  });
  it('over 65 with kidney disease the conflict between the sources is said', () => {
    expect(notes({ basis: 'body-older', egfr: 45, ageYears: 66 })).toContain('older-with-kidney-disease');
    expect(notes({ basis: 'body-older', egfr: 45, ageYears: 65 })).not.toContain('older-with-kidney-disease');
  });
  it('no generated person with kidney disease ever gets more than 0.8 g per kg', () => {
    const bases = ['lean-common', 'body-isn-sports', 'body-older', 'body-older-unwell', 'kidney'] as const;
    holds(
      fc.constantFrom(...bases),
      fc.double({ min: 40, max: 200, noNaN: true }),
      fc.double({ min: 18, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 59.999, noNaN: true }),
      (basis, massKg, ageYears, egfr) => {
        const result = resultOf(proteinTarget({ basis, massKg, ageYears, egfr }));
        return result.locked && result.highG !== null && result.highG <= 0.8 * massKg;
      },
    );
  });
  it('twice the body mass is twice the protein', () => {
    holds(fc.double({ min: 40, max: 150, noNaN: true }), (massKg) => {
      const at = (mass: number) => target({ basis: 'body-isn-sports', massKg: mass }).highG as number;
      return Math.abs(at(2 * massKg) - 2 * at(massKg)) < 1e-9;
    });
  });
});

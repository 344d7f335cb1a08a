import { describe, expect, it } from 'vitest';
import { energySurplus } from '#core/nutrition/energy-surplus.ts';
import { proteinTarget } from '#core/nutrition/protein-target.ts';
import { nutritionDefaults, nutritionSettings } from '#core/nutrition/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { resultOf } from '#tests/core/assessment/strength/result-of.ts';

const ends = (id: string) => {
  const setting = nutritionSettings.find((one) => one.id === id);
  if (!setting) throw new Error(`no choice ${id}`);
  return setting;
};

describe('the clinic’s own nutrition numbers', () => {
  it('start inside their bounds', () => {
    expect(checkSettings(nutritionSettings, nutritionDefaults)).toEqual([]);
  });
  it('can never be moved so that a low end passes its high end', () => {
    expect(ends('lean-protein-low').max).toBeLessThanOrEqual(ends('lean-protein-high').min);
    expect(ends('energy-surplus-low').max).toBeLessThanOrEqual(ends('energy-surplus-high').min);
    expect(ends('lean-mass-bmi-min').max).toBeLessThan(ends('lean-mass-bmi-max').min);
  });
  it('are what the calculations use', () => {
    const moved = { ...nutritionDefaults, 'lean-protein-high': 2, 'energy-surplus-high': 300 };
    const protein = proteinTarget({ massKg: 70, leanMassKg: 50, ageYears: 40, basis: 'lean-common' }, moved);
    expect(resultOf(protein).highG).toBe(100);
    const person = { maintenanceKcalPerDay: 2000, massKg: 70, statureCm: 175, jointDisease: false } as const;
    expect(resultOf(energySurplus(person, moved)).highKcal).toBe(300);
  });
});

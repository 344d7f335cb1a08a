/**
 * Lean mass in kg from body mass (kg) and stature (cm), Hume 1966.
 *
 * A small old sample; of the four formulas it gives the lowest figure for heavy men.
 */
import type { LeanMassFormula } from './formula.ts';

const coefficients = {
  male: { perKg: 0.3281, perCm: 0.33929, constant: -29.5336 },
  female: { perKg: 0.29569, perCm: 0.41813, constant: -43.2933 },
} as const;

export const hume: LeanMassFormula = {
  id: 'hume',
  citation: { source: 'hume-1966', locator: 'equations for men and women', mark: 'second-hand' },
  kilograms: (sex, massKg, statureCm) => {
    const row = coefficients[sex];
    return row.perKg * massKg + row.perCm * statureCm + row.constant;
  },
};

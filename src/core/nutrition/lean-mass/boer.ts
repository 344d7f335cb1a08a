/**
 * Lean mass in kg from body mass (kg) and stature (cm), Boer 1984.
 *
 * In a tall light woman it can give more lean mass than body mass; the row refuses such results.
 */
import type { LeanMassFormula } from './formula.ts';

const coefficients = {
  male: { perKg: 0.407, perCm: 0.267, constant: -19.2 },
  female: { perKg: 0.252, perCm: 0.473, constant: -48.3 },
} as const;

export const boer: LeanMassFormula = {
  id: 'boer',
  citation: { source: 'boer-1984', locator: 'equations for men and women', mark: 'second-hand' },
  kilograms: (sex, massKg, statureCm) => {
    const row = coefficients[sex];
    return row.perKg * massKg + row.perCm * statureCm + row.constant;
  },
};

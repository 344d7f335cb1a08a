/**
 * Lean mass in kg from body mass (kg) and stature (cm), James 1976.
 *
 * The square term makes it turn downward: above a body-mass index of about 43 (men) or 36 (women)
 * a heavier person is given less lean mass. The row says so beyond that point.
 */
import type { Sex } from '../body-fields.ts';
import type { LeanMassFormula } from './formula.ts';

const coefficients = {
  male: { perKg: 1.1, perSquaredRatio: 128 },
  female: { perKg: 1.07, perSquaredRatio: 148 },
} as const;

export const james: LeanMassFormula = {
  id: 'james',
  citation: { source: 'james-1976', locator: 'coefficients, as tabled elsewhere', mark: 'seen' },
  kilograms: (sex, massKg, statureCm) => {
    const row = coefficients[sex];
    return row.perKg * massKg - row.perSquaredRatio * (massKg / statureCm) ** 2;
  },
};

/** The body mass at which the formula is highest: where its slope, perKg − 2·k·W/H², is zero. */
export const jamesTurningPointKg = (sex: Sex, statureCm: number): number => {
  const row = coefficients[sex];
  return (row.perKg * statureCm ** 2) / (2 * row.perSquaredRatio);
};

/**
 * Lean mass in kg from body mass (kg) and body-mass index, Janmahasatian 2005.
 *
 * Fitted on 373 people with an index of 17.1 to 69.9, so it reaches further into obesity than the others.
 */
import { bodyMassIndex } from '../body-mass-index.ts';
import type { LeanMassFormula } from './formula.ts';

const coefficients = {
  male: { constant: 6680, perIndex: 216 },
  female: { constant: 8780, perIndex: 244 },
} as const;
const numerator = 9270;

export const janmahasatian: LeanMassFormula = {
  id: 'janmahasatian',
  citation: { source: 'janmahasatian-2005', locator: 'equations and abstract', mark: 'seen' },
  kilograms: (sex, massKg, statureCm) => {
    const row = coefficients[sex];
    return (numerator * massKg) / (row.constant + row.perIndex * bodyMassIndex(massKg, statureCm));
  },
};

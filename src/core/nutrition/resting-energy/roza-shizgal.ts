/**
 * Resting energy in kcal a day, the revision of Harris and Benedict by Roza and Shizgal 1984.
 *
 * Shown beside the 1919 equation, with which it is often confused.
 */
import type { Sex } from '../body-fields.ts';
import { type BodyLine, type FromBody, onLine } from './formula.ts';

const lines: Readonly<Record<Sex, BodyLine>> = {
  male: { constant: 88.362, perKg: 13.397, perCm: 4.799, perYear: -5.677 },
  female: { constant: 447.593, perKg: 9.247, perCm: 3.098, perYear: -4.33 },
};

export const rozaShizgal: FromBody = {
  from: 'body',
  id: 'roza-shizgal',
  citations: [{ source: 'roza-shizgal-1984', locator: 'revised coefficients', mark: 'second-hand' }],
  kcalPerDay: (sex, mass, stature, age) => onLine(lines[sex], mass, stature, age),
  notes: () => [],
};

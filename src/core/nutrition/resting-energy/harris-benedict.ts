/**
 * Resting energy in kcal a day, Harris and Benedict 1919.
 *
 * Over-predicts by about 5 % in people of today. The full digits are from memory; pages disagree on
 * the men's age term (6.755, 6.775, 6.76, 6.8), and 6.7550 is used.
 */
import type { Sex } from '../body-fields.ts';
import { type BodyLine, type FromBody, onLine } from './formula.ts';

const lines: Readonly<Record<Sex, BodyLine>> = {
  male: { constant: 66.473, perKg: 13.7516, perCm: 5.0033, perYear: -6.755 },
  female: { constant: 655.0955, perKg: 9.5634, perCm: 1.8496, perYear: -4.6756 },
};

export const harrisBenedict: FromBody = {
  from: 'body',
  id: 'harris-benedict',
  citations: [
    {
      source: 'harris-benedict-1919',
      locator: 'coefficients, full digits',
      mark: 'memory',
      remark: 'Rounded coefficients were seen; sources disagree on the men’s age term.',
    },
    { source: 'mifflin-1990', locator: 'abstract: over-prediction of about 5 %', mark: 'seen' },
  ],
  kcalPerDay: (sex, mass, stature, age) => onLine(lines[sex], mass, stature, age),
  notes: () => [
    {
      code: 'from-memory',
      text: 'Coefficients in full digits are from memory; this equation runs about 5 % high.',
    },
  ],
};

/**
 * Resting energy in kcal a day, Mifflin and St Jeor 1990, in its simple and its full-digit form.
 *
 * From 498 healthy people of 19 to 78 years (R² 0.71). The simple form is the default; a comparison
 * found it the most often within 10 % of a measurement. It does not see how muscular a person is.
 */
import type { Citation } from '#core/sources/citation.ts';
import type { Sex } from '../body-fields.ts';
import { type BodyLine, type FromBody, onLine } from './formula.ts';

const simple: Readonly<Record<Sex, BodyLine>> = {
  male: { constant: 5, perKg: 10, perCm: 6.25, perYear: -5 },
  female: { constant: -161, perKg: 10, perCm: 6.25, perYear: -5 },
};
/** The printed men's constant is +166 − 161. */
const full: Readonly<Record<Sex, BodyLine>> = {
  male: { constant: 166 - 161, perKg: 9.99, perCm: 6.25, perYear: -4.92 },
  female: { constant: -161, perKg: 9.99, perCm: 6.25, perYear: -4.92 },
};
const sample = { youngest: 19, oldest: 78 } as const;

const citations: readonly Citation[] = [
  { source: 'mifflin-1990', locator: 'abstract: both forms of the equation', mark: 'seen' },
  { source: 'frankenfield-2005', locator: 'share of people within 10 % of a measurement', mark: 'seen' },
];

const notes: FromBody['notes'] = (age) =>
  age < sample.youngest || age > sample.oldest
    ? [
        {
          code: 'outside-sample-age',
          text: `The people behind this equation were ${sample.youngest} to ${sample.oldest} years old.`,
        },
      ]
    : [];

export const mifflin: FromBody = {
  from: 'body',
  id: 'mifflin',
  citations,
  kcalPerDay: (sex, mass, stature, age) => onLine(simple[sex], mass, stature, age),
  notes,
};

export const mifflinFull: FromBody = {
  from: 'body',
  id: 'mifflin-full',
  citations: citations.slice(0, 1),
  kcalPerDay: (sex, mass, stature, age) => onLine(full[sex], mass, stature, age),
  notes,
};

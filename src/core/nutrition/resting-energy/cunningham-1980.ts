/**
 * Resting energy in kcal a day from lean mass, Cunningham 1980.
 *
 * A reanalysis of 223 people of the 1919 study, trained athletes left out.
 */
import type { FromLeanMass } from './formula.ts';

const line = { constant: 500, perKg: 22 } as const;

export const cunningham1980: FromLeanMass = {
  from: 'lean-mass',
  id: 'cunningham-1980',
  citations: [{ source: 'cunningham-1980', locator: 'abstract', mark: 'seen' }],
  kcalPerDay: (leanMassKg) => line.constant + line.perKg * leanMassKg,
  notes: () => [
    { code: 'measured-lean-mass', text: 'Use this equation only with lean mass from measured body fat.' },
  ],
};

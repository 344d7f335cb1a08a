/**
 * Resting energy in kcal a day from fat-free mass, Katch and McArdle.
 *
 * The same line as Cunningham 1991 (that identity is from memory). Meant for a measured fat-free mass;
 * a lean mass that was itself estimated carries its error into this figure.
 */
import type { FromLeanMass } from './formula.ts';

const line = { constant: 370, perKg: 21.6 } as const;

export const katchMcardle: FromLeanMass = {
  from: 'lean-mass',
  id: 'katch-mcardle',
  citations: [{ source: 'katch-mcardle', locator: 'equation', mark: 'second-hand' }],
  kcalPerDay: (leanMassKg) => line.constant + line.perKg * leanMassKg,
  notes: () => [
    { code: 'measured-lean-mass', text: 'Use this equation only with lean mass from measured body fat.' },
  ],
};

/**
 * Repetitions first, then load: how many repetitions are wanted at the present load so that the low
 * end of the band is still there after a step. Turned round from Epley, so it is sound up to about
 * 15 repetitions and flagged beyond. Says nothing of whether the joint allows the step.
 */

import { loadField } from '#core/assessment/strength/fields.ts';
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { milligrams } from '#core/units/units.ts';

/** Beyond this the turned-round equation is only an order of magnitude. */
const soundUpTo = 15;
const epleyConstant = 30;

export interface RepetitionsBeforeStep {
  readonly repetitionsExact: number;
  readonly repetitionsNeeded: number;
}

export const doubleProgressionCitations: readonly Citation[] = [
  {
    source: 'epley-1985',
    locator: 'formula turned round: r1 ≥ 30 × ((w2 / w1) × (1 + L / 30) − 1)',
    mark: 'computed',
    remark: 'Epley holds for 2–10 repetitions; carried on to about 15 and flagged beyond.',
  },
];

export const repetitionsBeforeStep = (input: {
  readonly fromKg: number;
  readonly toKg: number;
  readonly lowRepetitions: number;
}): Outcome<RepetitionsBeforeStep> => {
  const from = milligrams(input.fromKg);
  const to = milligrams(input.toKg);
  if (from === 0 || to <= from) {
    return refuse('toKg', 'inconsistent', 'Give a load to step to that is heavier than the present one.');
  }
  // Numerator in whole numbers, so that an exact answer is not pushed up by a stray last digit.
  const numerator = to * (epleyConstant + input.lowRepetitions) - epleyConstant * from;
  const repetitionsExact = numerator / from;
  const repetitionsNeeded = Math.ceil(repetitionsExact);
  const flag: Note = {
    code: 'outside-validity',
    text: `${repetitionsNeeded} repetitions are beyond the sets this holds for; take it as an order of magnitude and ask for a smaller step in load.`,
  };
  return answer({ repetitionsExact, repetitionsNeeded }, repetitionsNeeded > soundUpTo ? [flag] : []);
};

export const doubleProgressionRow = calculation({
  id: 'double-progression',
  title: 'Repetitions wanted before a step in load',
  area: 'strength',
  input: [
    loadField('fromKg', 'Present load.'),
    loadField('toKg', 'Load stepped to.'),
    {
      name: 'lowRepetitions',
      kind: 'integer',
      unit: '1',
      min: 1,
      max: 100,
      about: 'Low end of the band, to be kept after the step.',
    },
  ],
  result: [
    { name: 'repetitionsExact', unit: '1' },
    { name: 'repetitionsNeeded', unit: '1', about: 'Rounded up.' },
  ],
  citations: doubleProgressionCitations,
  calculate: repetitionsBeforeStep,
  example: { fromKg: 4, toKg: 5, lowRepetitions: 8 },
});

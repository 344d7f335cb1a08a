/** The eight equations in the order they are shown. */
import { brzycki } from './brzycki.ts';
import { epley } from './epley.ts';
import type { EquationId, RepetitionEquation } from './equation.ts';
import { kemmler } from './kemmler.ts';
import { lander } from './lander.ts';
import { lombardi } from './lombardi.ts';
import { mayhew } from './mayhew.ts';
import { oconner } from './oconner.ts';
import { wathan } from './wathan.ts';

export const equationIds = [
  'epley',
  'brzycki',
  'lombardi',
  'mayhew',
  'oconner',
  'wathan',
  'lander',
  'kemmler',
] as const satisfies readonly EquationId[];

export const equations: Readonly<Record<EquationId, RepetitionEquation>> = {
  epley,
  brzycki,
  lombardi,
  mayhew,
  oconner,
  wathan,
  lander,
  kemmler,
};

export const isInRange = (equation: RepetitionEquation, repetitions: number): boolean =>
  repetitions >= equation.fromRepetitions && repetitions <= equation.toRepetitions;

/** Why an equation says nothing about a set, in one sentence. */
export const outsideRange = (equation: RepetitionEquation, repetitions: number): string =>
  `${equation.title} is shown for ${equation.fromRepetitions}–${equation.toRepetitions} repetitions to failure; ${repetitions} is outside.`;

/** Every source of the equations, once each. */
export const equationCitations = equationIds
  .flatMap((id) => equations[id].citations)
  .filter((citation, place, all) => all.findIndex(({ source }) => source === citation.source) === place);

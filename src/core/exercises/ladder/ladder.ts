/**
 * Ladders: the exercises of one family in the order of the figure computed for this person, and the
 * step between neighbours. Where no figure exists the order is the catalogue's and the step is null:
 * an unknown step is never shown as a small one.
 */
import { exerciseById, exercisesInFamily } from '../catalogue.ts';
import type { Anthropometry, Level } from '../exercise.ts';
import { familyById } from '../families.ts';
import { levelOf } from './level.ts';

/**
 * Computed families: levels with a figure in rising order, then those without one. Listed families: the
 * order of the catalogue, whatever figures some of them have.
 */
export const ladder = (family: string, person: Anthropometry): readonly Level[] => {
  const levels = exercisesInFamily(family).map((exercise) => levelOf(exercise, person));
  if (familyById(family)?.order === 'listed') return levels;
  const figured = levels.filter((level) => level.measure !== null);
  const others = levels.filter((level) => level.measure === null);
  return [...figured.sort((a, b) => a.measure!.value - b.measure!.value), ...others];
};

/** Change of the ordering figure in percent; null where either has none or they differ in kind. */
export const stepBetween = (from: Level, to: Level): { readonly percent: number | null } => {
  const a = from.measure;
  const b = to.measure;
  if (!a || !b || a.kind !== b.kind || a.unit !== b.unit || a.about !== b.about || a.value <= 0) {
    return { percent: null };
  }
  return { percent: (b.value / a.value - 1) * 100 };
};

export interface NeighbouringLevel {
  readonly rung: Level;
  readonly stepPercent: number | null;
}

const neighbour = (exerciseId: string, person: Anthropometry, offset: 1 | -1): NeighbouringLevel | null => {
  const exercise = exerciseById(exerciseId);
  if (!exercise) return null;
  const levels = ladder(exercise.family, person);
  const index = levels.findIndex((level) => level.exerciseId === exerciseId);
  const from = levels[index];
  const level = levels[index + offset];
  if (!from || !level) return null;
  const computed = familyById(exercise.family)?.order === 'computed';
  if (computed && (from.measure === null || level.measure === null)) return null;
  return { rung: level, stepPercent: stepBetween(from, level).percent };
};

/** The next harder level; null at the top, for an unknown exercise, or where harder is not known. */
export const nextLevel = (exerciseId: string, person: Anthropometry): NeighbouringLevel | null =>
  neighbour(exerciseId, person, 1);

/** The next easier level; null at the bottom, for an unknown exercise, or where easier is not known. */
export const previousLevel = (exerciseId: string, person: Anthropometry): NeighbouringLevel | null =>
  neighbour(exerciseId, person, -1);

/** What the planner needs of a prescribed exercise, taken from its version and the catalogue. */
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Dose } from '../dose.ts';
import type { PlannedExercise } from './week-plan.ts';

export const plannedExercise = (version: {
  readonly itemId: string;
  readonly dose: Dose;
}): PlannedExercise => {
  const exercise = exerciseById(version.dose.exerciseId);
  return {
    itemId: version.itemId,
    title: exercise?.title ?? version.dose.exerciseId,
    dose: version.dose,
    target: exercise?.target ?? [],
    indirect: exercise?.indirect ?? [],
    limb: exercise?.limb ?? 'trunk',
  };
};

/**
 * What changing from one exercise to another adds: joints that were not loaded before and cautions
 * that did not go with it. An answer of the joints followed so far says nothing about either.
 */
import { exerciseById, jointsLoaded } from '../catalogue.ts';
import type { WorkedSide } from '../exercise.ts';
import type { Joint } from '../joints.ts';

export interface OnSide {
  readonly exerciseId: string;
  readonly side: WorkedSide;
}

/**
 * The side on which another exercise continues work done on `side`; null where it has to be chosen,
 * from both limbs together to one of them, or where the exercise is unknown.
 */
export const sideFor = (exerciseId: string, side: WorkedSide): WorkedSide | null => {
  const exercise = exerciseById(exerciseId);
  if (!exercise) return null;
  if (exercise.limbsAtOnce === 'both') return 'both';
  return side === 'both' ? null : side;
};

export const addedDemands = (
  from: OnSide,
  to: OnSide,
): { readonly joints: readonly Joint[]; readonly cautions: readonly string[] } => {
  const joints = jointsLoaded(from.exerciseId, from.side);
  const cautions = exerciseById(from.exerciseId)?.cautions ?? [];
  return {
    joints: jointsLoaded(to.exerciseId, to.side).filter((joint) => !joints.includes(joint)),
    cautions: (exerciseById(to.exerciseId)?.cautions ?? []).filter((id) => !cautions.includes(id)),
  };
};

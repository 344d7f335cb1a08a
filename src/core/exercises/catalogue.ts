/** The catalogue: every exercise, found by id, family, method; and the joints each one loads. */

import type { Method } from '../prescribing/methods.ts';
import type { Exercise, JointDemand, WorkedSide } from './exercise.ts';
import { type Joint, type JointName, jointsOn, loadedWith, type Side, sides } from './joints.ts';
import { armAndHand } from './regions/arm-and-hand.ts';
import { back } from './regions/back.ts';
import { bridges } from './regions/bridges.ts';
import { chestAndShoulder } from './regions/chest-and-shoulder.ts';
import { handExercises } from './regions/hand.ts';
import { legRaises } from './regions/leg-raises.ts';
import { lowerLeg } from './regions/lower-leg.ts';
import { machineExercises } from './regions/machines.ts';
import { thigh } from './regions/thigh.ts';
import { trunkAndNeck } from './regions/trunk-and-neck.ts';

export const exercises: readonly Exercise[] = [
  ...thigh,
  ...bridges,
  ...legRaises,
  ...lowerLeg,
  ...chestAndShoulder,
  ...back,
  ...armAndHand,
  ...handExercises,
  ...trunkAndNeck,
  ...machineExercises,
];

const byId: ReadonlyMap<string, Exercise> = new Map(exercises.map((exercise) => [exercise.id, exercise]));

export const exerciseById = (id: string): Exercise | undefined => byId.get(id);

/** The title of an exercise; the id itself where the catalogue does not know it. */
export const exerciseTitle = (id: string): string => byId.get(id)?.title ?? id;

export const exercisesFor = (method: Method): readonly Exercise[] =>
  exercises.filter((exercise) => exercise.methods.includes(method));

export const exercisesInFamily = (family: string): readonly Exercise[] =>
  exercises.filter((exercise) => exercise.family === family);

const opposite: Readonly<Record<Side, Side>> = { left: 'right', right: 'left' };

const sideOfDemand = (demand: JointDemand, exercise: Exercise, side: WorkedSide): WorkedSide => {
  if (side === 'both' || exercise.limbsAtOnce === 'both' || demand.of === 'both') return 'both';
  return demand.of === 'other' ? opposite[side] : side;
};

const jointsOf = (
  exerciseId: string,
  side: WorkedSide,
  isMeant: (demand: JointDemand) => boolean,
  namesOf: (name: JointName) => readonly JointName[],
): readonly Joint[] => {
  const exercise = byId.get(exerciseId);
  if (!exercise) throw new RangeError(`No exercise "${exerciseId}" in the catalogue.`);
  const found = exercise.loads
    .filter(isMeant)
    .flatMap((demand) =>
      namesOf(demand.joint).flatMap((name) => jointsOn(name, sideOfDemand(demand, exercise, side))),
    );
  return [...new Set(found)];
};

/** Worked out once for each exercise and side: a list of what may be chosen asks for all of them, over and over. */
const jointsOnce = (
  isMeant: (demand: JointDemand) => boolean,
  namesOf: (name: JointName) => readonly JointName[] = loadedWith,
): ((exerciseId: string, side: WorkedSide) => readonly Joint[]) => {
  const known = new Map<string, readonly Joint[]>();
  return (exerciseId, side) => {
    const key = `${exerciseId} ${side}`;
    const found = known.get(key) ?? Object.freeze(jointsOf(exerciseId, side, isMeant, namesOf));
    known.set(key, found);
    return found;
  };
};

/**
 * Every joint the exercise loads when prescribed for a side, main or carried: all of them are gated.
 * Exercises that use both limbs load both sides whatever side is named.
 */
export const jointsLoaded = jointsOnce(() => true);

/** Those the catalogue names for the exercise: of a hand the joint meant, not all that is loaded with it. */
const jointsNamed = jointsOnce(
  () => true,
  (name) => [name],
);

/** The same joints without those that are only loaded with another one, so that of a hand one thing is said. */
export const jointsToTell = (
  exerciseId: string,
  side: WorkedSide,
  joints: readonly Joint[],
): readonly Joint[] => {
  if (!byId.has(exerciseId)) return joints;
  const [loaded, named] = [jointsLoaded(exerciseId, side), jointsNamed(exerciseId, side)];
  return joints.filter((joint) => named.includes(joint) || !loaded.includes(joint));
};

/** The joints an exercise is about when prescribed for a side. */
export const mainJoints = jointsOnce(({ share }) => share === 'main');

/** The sides an exercise is prescribed for: one after the other, or both limbs together. */
export const workedSides = ({ limbsAtOnce }: Pick<Exercise, 'limbsAtOnce'>): readonly WorkedSide[] =>
  limbsAtOnce === 'both' ? ['both'] : sides;

/**
 * What limits of a surgeon, physician or clinician leave of an exercise and of a dose. A limit that has
 * run out binds as before and asks again; only a later entry, or lifting it, opens.
 *
 * A limit on weight-bearing closes every exercise whose field names the limb, whichever side works: who
 * stands on one leg stands on the other before and after. A limit on range closes what goes beyond its
 * degrees; where it names none it goes with the prescription as a caution and is the clinician's to judge.
 */

import { isOverCeiling, type LimitInForce, limitsInForce, loadCeilingKg } from '../decision/dose/limits.ts';
import { prescribedLoadKg } from '../decision/dose/volume.ts';
import { exerciseById, exercises, jointsLoaded, workedSides } from '../exercises/catalogue.ts';
import type { Exercise, WorkedSide } from '../exercises/exercise.ts';
import { type Joint, type JointName, jointNameOf, joints } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Method } from '../prescribing/methods.ts';
import type { Limit } from '../record/limit.ts';
import { dayInWords, jointInWords } from '../review/plain-words.ts';
import { type Day, dayNumber } from '../time/day.ts';
import { beyondDegrees } from './limit-degrees.ts';

const legJoints: readonly JointName[] = ['hip', 'knee', 'ankle', 'foot'];

/** Through the low back goes what legs carry and what arms carry; through the neck what arms do. */
const bearsWeight = (exercise: Exercise, joint: Joint): boolean => {
  const name = jointNameOf(joint);
  if (name === 'low-back') return exercise.weightBearing.length > 0;
  return exercise.weightBearing.includes(legJoints.includes(name) ? 'legs' : 'arms');
};

const untilWords = ({ to, isExpired }: LimitInForce): string => {
  if (to === null) return 'until lifted';
  const day = dayInWords(to);
  return isExpired ? `its last day was ${day}, and it still applies until it is reviewed` : `until ${day}`;
};

export const limitSentence = (limit: LimitInForce, what: string): string =>
  `${what} (${jointInWords(limit.joint)}, set by ${limit.author}, ${untilWords(limit)}).`;

/** Why an exercise may not be done at all under a limit; null where it may. No exercise listed lands or hops. */
const contraindicatesExercise = (
  limit: LimitInForce,
  exercise: Exercise,
  side: WorkedSide,
  method: Method | undefined,
): string | null => {
  if (limit.kind === 'methods') {
    const isClosed = method !== undefined && limit.withoutMethods?.includes(method);
    return isClosed ? limitSentence(limit, `The phase in force does not allow ${methodWords[method]}`) : null;
  }
  if (
    limit.kind === 'weight-bearing' &&
    limit.weightBearing !== 'as-tolerated' &&
    bearsWeight(exercise, limit.joint)
  ) {
    return limitSentence(limit, `${bearingInWords(limit)}; this exercise puts weight on the joint`);
  }
  const beyond = beyondDegrees(limit, exercise, side);
  return beyond && limitSentence(limit, beyond);
};

const methodWords: Readonly<Record<Method, string>> = {
  'low-load': 'low load',
  variation: 'exercise variations',
  occlusion: 'occlusion work',
};

/** How much weight the limb may take, as it stands in front of a reason. */
export const bearingInWords = ({ weightBearing, bearKg }: Limit): string => {
  switch (weightBearing) {
    case 'none':
      return 'No weight-bearing is allowed';
    case 'touch':
      return 'Only touch weight-bearing is allowed';
    case 'partial':
      return `Only partial weight-bearing to ${bearKg} kg is allowed`;
    case 'as-tolerated':
      return 'Weight-bearing is allowed as tolerated';
    default:
      return 'A weight-bearing limit is in force';
  }
};

export interface LimitsFor {
  readonly limits: readonly LimitInForce[];
  readonly limitKg: number;
  /** Why each of the limits closes the exercise, in their order; null where that one does not. */
  readonly contraindicationOf: readonly (string | null)[];
  /** Sentences that close the exercise; empty where it may be done. */
  readonly contraindications: readonly string[];
}

/** Those on a joint the exercise loads, and those on a limb that has to carry weight for it. */
const limitsTouching = (
  all: readonly Limit[],
  exercise: Exercise,
  side: WorkedSide,
  today: Day,
): readonly LimitInForce[] => {
  const loaded = jointsLoaded(exercise.id, side);
  return limitsInForce(all, joints, dayNumber(today)).filter(
    (limit) =>
      loaded.includes(limit.joint) || (limit.kind === 'weight-bearing' && bearsWeight(exercise, limit.joint)),
  );
};

export const limitsFor = (
  all: readonly Limit[],
  exerciseId: string,
  side: WorkedSide,
  today: Day,
  /** Left out where no method is chosen yet: then none is closed. */
  method?: Method,
): LimitsFor => {
  const exercise = exerciseById(exerciseId);
  if (!exercise)
    return { limits: [], limitKg: loadCeilingKg([]), contraindicationOf: [], contraindications: [] };
  const limits = limitsTouching(all, exercise, side, today);
  const contraindicationOf = limits.map((limit) => contraindicatesExercise(limit, exercise, side, method));
  const contraindications = contraindicationOf.filter((text) => text !== null);
  return { limits, limitKg: loadCeilingKg(limits), contraindicationOf, contraindications };
};

/** Refusals of a dose, whoever made it: used when it is proposed, kept and signed. */
export const limitRefusals = (all: readonly Limit[], dose: Dose, today: Day): readonly Refusal[] => {
  const { limits, contraindications } = limitsFor(all, dose.exerciseId, dose.side, today, dose.method);
  const loadKg = prescribedLoadKg(dose);
  const over = limits
    .filter((limit) => isOverCeiling(loadKg, loadCeilingKg([limit])))
    .map((limit) => limitSentence(limit, `${loadKg} kg is over the limit of ${limit.limitKg} kg`));
  const reasons = [...contraindications, ...over];
  return reasons.map((reason) => ({ field: 'input.exerciseId', code: 'inconsistent', reason }));
};

export interface LimitedExercise {
  readonly exerciseId: string;
  readonly side: WorkedSide;
  /** Sentences that close it; empty where only the load is bounded. */
  readonly contraindications: readonly string[];
  readonly limitKg: number | null;
}

/** Exercises and sides of the catalogue that a limit touches; all others are as they were. */
export const limitedExercises = (all: readonly Limit[], today: Day): readonly LimitedExercise[] =>
  exercises.flatMap((exercise) => {
    const { id } = exercise;
    return workedSides(exercise).flatMap((side) => {
      const { limits, limitKg, contraindications } = limitsFor(all, id, side, today);
      const isBounded = contraindications.length > 0 || Number.isFinite(limitKg);
      return limits.length > 0 && isBounded
        ? [{ exerciseId: id, side, contraindications, limitKg: Number.isFinite(limitKg) ? limitKg : null }]
        : [];
    });
  });

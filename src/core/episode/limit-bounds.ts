/**
 * What limits of a surgeon, physician or clinician leave of an exercise and of a dose. A limit that has
 * run out binds as before and asks again; only a later entry, or lifting it, opens.
 *
 * The catalogue knows no degrees of range: a limit on range goes with the prescription as a caution and
 * is the clinician's to judge. Which positions bear weight is read from the catalogue's own words for the
 * position; that reading is a choice of this project.
 */

import { type LimitInForce, limitsInForce, loadCeilingKg } from '../decision/dose/limits.ts';
import { exerciseById, exercises, jointsLoaded } from '../exercises/catalogue.ts';
import type { Exercise, WorkedSide } from '../exercises/exercise.ts';
import { type Joint, jointNameOf } from '../exercises/joints.ts';
import type { Refusal } from '../outcome.ts';
import type { Caution } from '../prescribing/cautions/caution.ts';
import type { LimitedBy } from '../prescribing/cautions/patient-caution.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Limit } from '../record/record.ts';
import { type Day, dayNumber } from '../time/day.ts';
import { milligrams } from '../units/units.ts';

const legJoints = ['hip', 'knee', 'ankle', 'foot', 'low-back'];
const bearing = {
  legs: /^(standing|sitting to standing|bent forward|leaning|on )/,
  arms: /^(on |hanging|leaning)/,
};

/** True unless the position keeps weight off the limb of the joint; a bridge rests on feet and shoulders. */
const bearsWeight = (exercise: Exercise, joint: Joint): boolean => {
  const isOfLeg = legJoints.includes(jointNameOf(joint));
  const byPosition = (isOfLeg ? bearing.legs : bearing.arms).test(exercise.position);
  return byPosition || (isOfLeg && /bridge/.test(`${exercise.family} ${exercise.id}`));
};

const untilWords = (limit: LimitInForce): string =>
  limit.isExpired
    ? `its last day was ${limit.to}, and it still applies until it is reviewed`
    : limit.to === null
      ? 'until lifted'
      : `until ${limit.to}`;

const sentence = (limit: LimitInForce, what: string): string =>
  `${what} (${limit.joint}, set by ${limit.author}, ${untilWords(limit)}).`;

/** Why an exercise may not be done at all under a limit; null where it may. No exercise listed lands or hops. */
const contraindicatesExercise = (limit: LimitInForce, exercise: Exercise): string | null =>
  limit.kind === 'weight-bearing' && bearsWeight(exercise, limit.joint)
    ? sentence(limit, 'A weight-bearing limit is in force; this exercise puts weight on the joint')
    : null;

const kindWords: Readonly<Record<LimitedBy, string>> = {
  'weight-bearing': 'weight-bearing',
  range: 'range of movement',
  'load-limit': 'load',
  'no-impact': 'impact',
};

const limitCaution = (limit: LimitInForce, kind: LimitedBy): Caution => ({
  id: `limit-${kind}-${limit.joint}`,
  text: sentence(
    limit,
    `Limit on ${kindWords[kind]}; the clinician judges that the exercise keeps within it`,
  ),
  patient: { key: 'limit', kind, joint: limit.joint, author: limit.author },
  from: 'limit',
  support: 'clinic',
});

/** Every limit on a joint the exercise loads, told with the prescription. */
export const limitCautions = (
  all: readonly Limit[],
  on: { readonly exerciseId: string; readonly side: WorkedSide },
  today: Day,
): readonly Caution[] =>
  limitsFor(all, on.exerciseId, on.side, today).limits.flatMap((limit) =>
    limit.kind === 'none' ? [] : [limitCaution(limit, limit.kind)],
  );

export interface LimitsFor {
  readonly limits: readonly LimitInForce[];
  readonly limitKg: number;
  /** Why each of the limits closes the exercise, in their order; null where that one does not. */
  readonly contraindicationOf: readonly (string | null)[];
  /** Sentences that close the exercise; empty where it may be done. */
  readonly contraindications: readonly string[];
}

export const limitsFor = (
  all: readonly Limit[],
  exerciseId: string,
  side: WorkedSide,
  today: Day,
): LimitsFor => {
  const exercise = exerciseById(exerciseId);
  const limits = exercise ? limitsInForce(all, jointsLoaded(exerciseId, side), dayNumber(today)) : [];
  const contraindicationOf = exercise ? limits.map((limit) => contraindicatesExercise(limit, exercise)) : [];
  const contraindications = contraindicationOf.filter((text) => text !== null);
  return { limits, limitKg: loadCeilingKg(limits), contraindicationOf, contraindications };
};

const handledKg = (dose: Dose): number => (dose.method === 'variation' ? dose.addedKg : dose.loadKg);

/** Refusals of a dose, whoever made it: used when it is proposed, kept and signed. */
export const limitRefusals = (all: readonly Limit[], dose: Dose, today: Day): readonly Refusal[] => {
  const { limits, limitKg, contraindications } = limitsFor(all, dose.exerciseId, dose.side, today);
  const over = milligrams(handledKg(dose)) > milligrams(limitKg);
  const ceilings = limits.filter((limit) => limit.kind === 'load-limit');
  const reasons = [
    ...contraindications,
    ...(over
      ? ceilings.map((limit) =>
          sentence(limit, `${handledKg(dose)} kg is over the limit of ${limit.limitKg} kg`),
        )
      : []),
  ];
  return reasons.map((reason) => ({ field: 'input.exerciseId', code: 'inconsistent', reason }));
};

/** Loads that may be handled for an exercise. */
export const loadsWithin = (ownedLoadsKg: readonly number[], limitKg: number): readonly number[] =>
  ownedLoadsKg.filter((kg) => milligrams(kg) <= milligrams(limitKg));

export interface LimitedExercise {
  readonly exerciseId: string;
  readonly side: WorkedSide;
  /** Sentences that close it; empty where only the load is bounded. */
  readonly contraindications: readonly string[];
  readonly limitKg: number | null;
}

/** Exercises and sides of the catalogue that a limit touches; all others are as they were. */
export const limitedExercises = (all: readonly Limit[], today: Day): readonly LimitedExercise[] =>
  exercises.flatMap(({ id, limbsAtOnce }) => {
    const worked: readonly WorkedSide[] = limbsAtOnce === 'both' ? ['both'] : ['left', 'right'];
    return worked.flatMap((side) => {
      const { limits, limitKg, contraindications } = limitsFor(all, id, side, today);
      const isBounded = contraindications.length > 0 || Number.isFinite(limitKg);
      return limits.length > 0 && isBounded
        ? [{ exerciseId: id, side, contraindications, limitKg: Number.isFinite(limitKg) ? limitKg : null }]
        : [];
    });
  });

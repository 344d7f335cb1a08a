/**
 * The exercises a search finds, those that a dose can be proposed for here and now first, and the others each
 * with why not. It asks the very functions that propose a dose, so that a list and a proposal never differ.
 */
import { limitsFor } from '../episode/limit-bounds.ts';
import { exerciseById, mainJoints } from '../exercises/catalogue.ts';
import { equipmentMissing } from '../exercises/equipment.ts';
import type { Exercise, WorkedSide } from '../exercises/exercise.ts';
import type { Joint } from '../exercises/joints.ts';
import { type ExerciseNames, type ExerciseSearch, findExercises } from '../exercises/search.ts';
import type { Refusal } from '../outcome.ts';
import type { Method } from './methods.ts';
import type { PrescribingContext } from './prescribing-context.ts';
import { boundedDose, eligibilityRefusals } from './propose.ts';

export interface ChoiceSearch extends ExerciseSearch {
  /** Left out = any. */
  readonly method?: Method;
  /** Only what can be done with the things at home. */
  readonly isAtHome: boolean;
}

export interface ChoiceFor {
  readonly context: PrescribingContext;
  /** Things the patient has at home. */
  readonly ownedEquipment: readonly string[];
  readonly followedJoints: readonly Joint[];
  readonly names: ExerciseNames;
}

/** One exercise by one method on one side. */
export interface Way {
  readonly method: Method;
  readonly side: WorkedSide;
}

export interface WayNotPossible extends Way {
  readonly reasons: readonly string[];
  /** Something has to be recorded, or given with the dose; nothing found stands against it. */
  readonly isMissing: boolean;
}

export interface ExerciseChoice {
  readonly exerciseId: string;
  readonly possible: readonly Way[];
  readonly notPossible: readonly WayNotPossible[];
  readonly isInForce: boolean;
}

/**
 * Low load and variation with the clinic's own numbers. Work with a cuff cannot be proposed without what only
 * the form asks, so of it the refusals that come before any figure are read.
 */
const doseRefusals = (context: PrescribingContext, exerciseId: string, way: Way): readonly Refusal[] => {
  const { method, side } = way;
  if (method === 'occlusion') return eligibilityRefusals(context, { exerciseId, method, side });
  const outcome = boundedDose(context, { exerciseId, method, side });
  return outcome.ok ? [] : outcome.refused;
};

/** A limit is looked at before there is a dose: what has yet to be measured does not hide it. */
const refusalsOf = (context: PrescribingContext, exerciseId: string, way: Way): readonly Refusal[] => {
  const { limits, today } = context;
  const { contraindications } = limitsFor(limits, exerciseId, way.side, today, way.method);
  const closedBy = contraindications.map(
    (reason): Refusal => ({ field: 'input.exerciseId', code: 'inconsistent', reason }),
  );
  const all = [...closedBy, ...doseRefusals(context, exerciseId, way)];
  return [...new Map(all.map((refusal) => [refusal.reason, refusal])).values()];
};

/** What a person lacks at home for an exercise, in words. */
export const notAtHome = (
  exerciseId: string,
  {
    context,
    ownedEquipment,
  }: Pick<ChoiceFor, 'ownedEquipment'> & {
    readonly context: Pick<PrescribingContext, 'ownedLoadsKg'>;
  },
): readonly string[] => {
  if (exerciseById(exerciseId)?.machine) return ['Done on a machine of the clinic, not at home.'];
  const missing = equipmentMissing(exerciseId, {
    equipment: ownedEquipment,
    loadsKg: context.ownedLoadsKg,
  });
  return missing.length > 0 ? [`Not at home as recorded: ${missing.join('; ')}.`] : [];
};

const choiceOf = (
  exercise: Exercise,
  ways: readonly Way[],
  who: ChoiceFor,
  isAtHome: boolean,
): ExerciseChoice => {
  const lacking = isAtHome ? notAtHome(exercise.id, who) : [];
  const judged = ways.map((way) => {
    const refused = refusalsOf(who.context, exercise.id, way);
    return {
      ...way,
      reasons: [...refused.map(({ reason }) => reason), ...lacking],
      isMissing: refused.every(({ code }) => code === 'missing'),
    };
  });
  return {
    exerciseId: exercise.id,
    possible: judged
      .filter(({ reasons }) => reasons.length === 0)
      .map(({ method, side }) => ({ method, side })),
    notPossible: judged.filter(({ reasons }) => reasons.length > 0),
    isInForce: who.context.inForce.some(({ exerciseId }) => exerciseId === exercise.id),
  };
};

/** First what can be done, then what is in force, then what is about a joint that is followed. */
const rankOf = ({ exerciseId, possible, notPossible, isInForce }: ExerciseChoice, who: ChoiceFor): number => {
  const isFollowed = [...possible, ...notPossible].some(({ side }) =>
    mainJoints(exerciseId, side).some((joint) => who.followedJoints.includes(joint)),
  );
  return (possible.length > 0 ? 0 : 4) + (isInForce ? 0 : 2) + (isFollowed ? 0 : 1);
};

export const exerciseChoice = (who: ChoiceFor, search: ChoiceSearch): readonly ExerciseChoice[] => {
  const ranked = findExercises(search, who.names).flatMap(({ exercise, sides }) => {
    const ways = exercise.methods
      .filter((method) => !search.method || method === search.method)
      .flatMap((method) => sides.map((side) => ({ method, side })));
    if (ways.length === 0) return [];
    const choice = choiceOf(exercise, ways, who, search.isAtHome);
    return [{ choice, rank: rankOf(choice, who) }];
  });
  return ranked.toSorted((a, b) => a.rank - b.rank).map(({ choice }) => choice);
};

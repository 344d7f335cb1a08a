/**
 * Exercises found by what a clinician types or narrows them by. It says nothing of whether one may be done:
 * that is read where a dose is proposed.
 */
import { hasWords } from '../word-search.ts';
import { exercises, mainJoints, workedSides } from './catalogue.ts';
import type { Exercise, Muscle, WorkedSide } from './exercise.ts';
import type { Joint, Limb } from './joints.ts';

/** What people call an exercise, by its id: the name the patient reads, the one colleagues use, and others. */
export type ExerciseNames = Readonly<
  Record<string, { readonly plain: string; readonly trade: string; readonly also?: string }>
>;

export interface ExerciseSearch {
  /** As typed; empty = any. Each word has to be found. */
  readonly words: string;
  /** Left out = any. */
  readonly region?: Limb | 'trunk';
  /** A joint the exercise is about, with its side. */
  readonly joint?: Joint;
  /** A muscle it is done for, or works half. */
  readonly trains?: Muscle;
}

export interface FoundExercise {
  readonly exercise: Exercise;
  /** The sides on which it answers the search; never empty. */
  readonly sides: readonly WorkedSide[];
}

/** Names, the joints it is about and the muscles it is done for, each word able to be begun. */
const searched = (exercise: Exercise, names: ExerciseNames): string => {
  const own = names[exercise.id];
  const joints = exercise.loads.filter(({ share }) => share === 'main').map(({ joint }) => joint);
  return [own?.trade, own?.plain, own?.also, exercise.title, ...joints, ...exercise.target].join(' ');
};

const isNamed = (exercise: Exercise, words: string, names: ExerciseNames): boolean =>
  hasWords(searched(exercise, names), words);

const sidesOn = (exercise: Exercise, joint: Joint | undefined): readonly WorkedSide[] =>
  workedSides(exercise).filter((side) => !joint || mainJoints(exercise.id, side).includes(joint));

/** In the catalogue's order. */
export const findExercises = (search: ExerciseSearch, names: ExerciseNames): readonly FoundExercise[] => {
  const { words, region, joint, trains } = search;
  return exercises
    .filter(
      (exercise) =>
        (!region || exercise.limb === region) &&
        (!trains || exercise.target.includes(trains) || exercise.indirect.includes(trains)) &&
        isNamed(exercise, words, names),
    )
    .map((exercise) => ({ exercise, sides: sidesOn(exercise, joint) }))
    .filter(({ sides }) => sides.length > 0);
};

/**
 * A load added to a variation, in a backpack, a hand or a cuff. Only to the hardest level of an exercise: below it
 * the next level is the step, and a load carried along would make that step another one than its size says.
 */
import { exerciseById, exercisesInFamily } from '#core/exercises/catalogue.ts';
import { namesOwnWeight } from '#core/exercises/equipment.ts';
import type { Exercise } from '#core/exercises/exercise.ts';
import type { Refusal } from '#core/outcome.ts';
import { notOwnedInWords } from '../low-load/owned-load.ts';

/** The model counts a load that is added, or the exercise is done with a weight whose size it leaves open. */
const takesLoad = ({ id, setting }: Exercise): boolean =>
  setting && 'addedKg' in setting ? setting.addedKg === 0 : namesOwnWeight(id) === 'open';

export const mayAddLoad = (exerciseId: string): boolean => {
  const exercise = exerciseById(exerciseId);
  if (!exercise?.methods.includes('variation') || !takesLoad(exercise)) return false;
  const levels = exercisesInFamily(exercise.family).filter(({ methods }) => methods.includes('variation'));
  return levels.at(-1)?.id === exerciseId;
};

const refused = (code: Refusal['code'], reason: string): readonly Refusal[] => [
  { field: 'input.addedKg', code, reason },
];

export const addedLoadRefusals = (
  { exerciseId, addedKg }: { readonly exerciseId: string; readonly addedKg?: number | undefined },
  ownedKg: readonly number[],
): readonly Refusal[] => {
  if (addedKg === undefined) return [];
  if (!mayAddLoad(exerciseId))
    return refused(
      'inconsistent',
      'A load is added to the hardest level of an exercise only, where the catalogue knows of one. Leave it empty, or choose a harder level.',
    );
  const notOwned = notOwnedInWords(addedKg, ownedKg);
  return notOwned === null ? [] : refused('not-listed', notOwned);
};

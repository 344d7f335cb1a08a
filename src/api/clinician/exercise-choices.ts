/** The exercises a clinician may choose from, for this patient and now, with what each is called. */
import { z } from 'zod';
import { type Muscle, muscles } from '#core/exercises/exercise.ts';
import { type Joint, joints, limbs } from '#core/exercises/joints.ts';
import type { ExerciseNames } from '#core/exercises/search.ts';
import { exerciseChoice } from '#core/prescribing/exercise-choice.ts';
import { methods } from '#core/prescribing/methods.ts';
import type { Access } from '#data/access.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { exerciseName } from '#messages/exercises.ts';
import { otherNames, tradeNames } from '#messages/trade-names.ts';

export const searchInput = z.object({
  words: z.string().max(100).default(''),
  method: z.enum(methods).optional(),
  region: z.enum([...limbs, 'trunk']).optional(),
  joint: z.enum(joints as readonly [Joint, ...Joint[]]).optional(),
  trains: z.enum(muscles as readonly [Muscle, ...Muscle[]]).optional(),
  isAtHome: z.boolean().default(false),
});

const names: ExerciseNames = Object.fromEntries(
  Object.entries(tradeNames).map(([id, trade]) => [
    id,
    { trade, plain: exerciseName(id).en, also: otherNames(trade) },
  ]),
);

export const exerciseChoices = async (
  access: Access,
  patient: Patient,
  search: z.output<typeof searchInput>,
) => {
  const who = {
    context: await prescribingContextFor(access, patient),
    ownedEquipment: patient.profile?.ownedEquipment ?? [],
    followedJoints: patient.profile?.followedJoints ?? [],
    names,
  };
  return exerciseChoice(who, search).map((choice) => ({ ...choice, ...names[choice.exerciseId]! }));
};

/**
 * Days for work with a cuff while no week has been planned: Monday, Wednesday and Friday at most, one
 * exercise with a cuff on a limb a day, as often as prescribed (common practice: once a session on a limb,
 * two to three sessions a week; no source). Every other exercise then stands on every day and says how
 * often it is meant; a cuff does not wait for that to be read. What is done only with a clinician beside
 * the patient is left out: that clinician chooses the day. It says nothing of which days suit the patient.
 */
import type { Weekday } from './planned-sessions.ts';
import { laidOut, weekTemplates } from './templates.ts';
import type { PlannedExercise } from './week-plan.ts';

const threeDays = weekTemplates.find(({ id }) => id === 'three-days')!;

/** By line; a line that is not named has no such limit. */
export const unplannedCuffDays = (
  exercises: readonly PlannedExercise[],
): ReadonlyMap<string, readonly Weekday[]> => {
  const alone = exercises.filter(({ dose }) => dose.method === 'occlusion' && !dose.supervised);
  return new Map(laidOut(threeDays, alone).map(({ itemId, weekdays }) => [itemId, weekdays]));
};

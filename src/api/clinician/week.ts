/** Saving a week: looked at as a whole here as well, whatever page it came from. */
import { plannedExercise } from '#core/prescribing/programme/planned-exercise.ts';
import type { ProgrammeItem } from '#core/prescribing/programme/planned-sessions.ts';
import { type ProgrammeValues, programmeDefaults } from '#core/prescribing/programme/session-length.ts';
import { refusedIn, weekPlan } from '#core/prescribing/programme/week-plan.ts';
import type { Access } from '#data/access.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { saveProgramme } from '#data/prescribing/programmes.ts';
import { Problem } from '../errors.ts';

export const planningValues = async (access: Access): Promise<ProgrammeValues> => {
  const own = await settingsOf(access);
  const values = Object.entries(programmeDefaults).map(([id, fallback]) => [id, own[id] ?? fallback]);
  return Object.fromEntries(values);
};

const refusedText =
  'Plan one exercise with a cuff for each limb in a session, and no more than three days a week for each limb. Move or remove a day.';

const foreignText =
  'This week names an exercise that was never prescribed to this patient. Load the page again and plan from what it shows.';

export const saveWeek = async (
  access: Access,
  patientId: string,
  items: readonly ProgrammeItem[],
): Promise<number> => {
  const prescriptions = await prescriptionsOf(access, patientId);
  const own = new Set(prescriptions.map(({ itemId }) => itemId));
  if (!items.every(({ itemId }) => own.has(itemId))) throw new Problem('refused', foreignText);
  const exercises = inForce(prescriptions).map(plannedExercise);
  if (refusedIn(weekPlan(exercises, items, await planningValues(access))).length > 0) {
    throw new Problem('refused', refusedText);
  }
  return saveProgramme(access, patientId, items);
};

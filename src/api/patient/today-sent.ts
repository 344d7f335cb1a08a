/** What the patient sent today and may still put right, with the names of its exercises. */
import { heldSeconds } from '#core/decision/dose/volume.ts';
import type { Access } from '#data/access.ts';
import { sentToday } from '#data/entries/sent-sessions.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { exerciseName } from '#messages/exercises.ts';
import type { TodayView } from './today-view.ts';

export const sentView = async (
  access: Access,
  patientId: string,
  zone: string,
  written: readonly Pick<Prescription, 'id' | 'dose'>[],
): Promise<Pick<TodayView, 'sent'>> => {
  const entry = await sentToday(access, patientId, zone);
  if (!entry) return { sent: null };
  const named = written.filter(({ id }) => entry.sets.some(({ prescriptionId }) => prescriptionId === id));
  const held = named.flatMap(({ id, dose }) => {
    const seconds = heldSeconds(dose);
    return seconds === null ? [] : [[id, seconds] as const];
  });
  return {
    sent: {
      entry,
      titles: Object.fromEntries(named.map(({ id, dose }) => [id, exerciseName(dose.exerciseId)])),
      ...(held.length > 0 ? { held: Object.fromEntries(held) } : {}),
    },
  };
};

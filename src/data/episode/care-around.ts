/** The care around a patient's dose as the core asks for it. */
import type { CareAround } from '#core/episode/care-eligibility.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import { type Suspension, suspensionOn } from '#core/episode/suspensions.ts';
import type { Access } from '../access.ts';
import type { Prescription } from '../prescribing/prescriptions.ts';
import { newestScreening, type RecordedScreening } from '../screening/screenings.ts';
import { eventsOf } from './care-events.ts';
import { consentsOf } from './consents.ts';
import { episodesOf } from './episodes.ts';

export const careAroundOf = async (
  access: Access,
  patientId: string,
  screening: Pick<RecordedScreening, 'day' | 'recordedAt'> | null,
): Promise<CareAround> => ({
  episodeStatus: episodeStatusOn(await episodesOf(access, patientId), access.day),
  consents: await consentsOf(access, patientId),
  events: await eventsOf(access, patientId),
  screening,
});

/** Exercises that rest today for a reason outside the engine, by prescription. */
export const suspensionsOf = async (
  access: Access,
  patientId: string,
  versions: readonly Prescription[],
): Promise<{ readonly care: CareAround; readonly suspensions: ReadonlyMap<string, Suspension> }> => {
  const care = await careAroundOf(access, patientId, await newestScreening(access, patientId));
  const suspended = versions.flatMap((row): [string, Suspension][] => {
    const suspension = suspensionOn(care, row.dose);
    return suspension ? [[row.id, suspension]] : [];
  });
  return { care, suspensions: new Map(suspended) };
};

/** The care around a patient's dose as the core asks for it. */
import type { CareAround } from '#core/episode/care-eligibility.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import type { Access } from '../access.ts';
import type { RecordedScreening } from '../screening/screenings.ts';
import { eventsOf } from './care-events.ts';
import { consentsOf } from './consents.ts';
import { episodesOf } from './episodes.ts';

export const careAroundOf = async (
  access: Access,
  patientId: string,
  screening: Pick<RecordedScreening, 'day' | 'recordedAt' | 'answers'> | null,
): Promise<CareAround> => ({
  episodeStatus: episodeStatusOn(await episodesOf(access, patientId), access.day),
  consents: await consentsOf(access, patientId),
  events: await eventsOf(access, patientId),
  screening,
});

/** Whether questions before a visit wait for the patient, for the link on the day's page. */
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import { withDefaults } from '#core/prescribing/prescribing-context.ts';
import { questionsWait } from '#core/screening/pre-visit.ts';
import type { Access } from '#data/access.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { newestPreVisit } from '#data/screening/pre-visits.ts';
import { newestScreening } from '#data/screening/screenings.ts';

export const questionsWaitFor = async (access: Access, patientId: string): Promise<boolean> => {
  const { state, returned } = episodeStatusOn(await episodesOf(access, patientId), access.day);
  if (state === 'closed' || state === 'on-break') return false;
  const validDays = withDefaults(await settingsOf(access))['screening-valid-days'];
  return questionsWait({
    screening: await newestScreening(access, patientId),
    sent: await newestPreVisit(access, patientId),
    returnedOn: returned?.on ?? null,
    validDays: validDays ?? Number.POSITIVE_INFINITY,
    today: access.day,
  });
};

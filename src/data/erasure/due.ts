/** Records whose care has ended so long ago that the clinic no longer keeps them; what becomes of them is its act. */
import { asc, eq } from 'drizzle-orm';
import { closedStates, type EpisodeState } from '#core/episode/episode.ts';
import { recordKeepingSettings } from '#core/record/settings.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import { clinicOf } from '../patients/people.ts';
import { episode, episodeChange } from '../schema/care.ts';
import { patientIdentity } from '../schema/people.ts';
import { lastWritten } from './last-written.ts';

export interface EndedCare {
  readonly patientId: string;
  /** Day on which the last of its episodes of care ended; without any, that on which something was last written. */
  readonly endedOn: Day;
  readonly hadEpisode: boolean;
  /** First day on which the clinic's years are over. */
  readonly dueOn: Day;
}

/** Where each episode of care stands: its newest change, or open. */
const standsOf = async ({ store, clinicId }: Access) => {
  const episodes = await store.read
    .select({ id: episode.id, patientId: episode.patientId })
    .from(episode)
    .innerJoin(patientIdentity, eq(patientIdentity.patientId, episode.patientId))
    .where(eq(episode.clinicId, clinicId));
  const changes = await store.read
    .select({ id: episodeChange.episodeId, state: episodeChange.state, on: episodeChange.on })
    .from(episodeChange)
    .where(eq(episodeChange.clinicId, clinicId))
    .orderBy(asc(episodeChange.recordedAt), asc(episodeChange.on));
  const newest = new Map(changes.map((change) => [change.id, change]));
  return episodes.map(({ id, patientId }) => ({ patientId, change: newest.get(id) ?? null }));
};

const isOver = (change: { readonly state: EpisodeState } | null): boolean =>
  change !== null && closedStates.includes(change.state);

/** Whether an episode of care of this record goes on. */
export const isInCare = async (access: Access, patientId: string): Promise<boolean> =>
  (await standsOf(access)).some((one) => one.patientId === patientId && !isOver(one.change));

/**
 * Every record whose episodes of care have all ended, or that never had one, the longest ended first. Years are
 * counted as 365.25 days.
 */
export const endedCare = async (access: Access): Promise<readonly EndedCare[]> => {
  const years = await settingValue(access, recordKeepingSettings, 'record-retention-years');
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const going = new Set<string>();
  const ended = new Map<string, Day>();
  for (const { patientId, change } of await standsOf(access)) {
    if (!change || !isOver(change)) going.add(patientId);
    else if (change.on > (ended.get(patientId) ?? '')) ended.set(patientId, change.on);
  }
  return [...lastWritten(access)]
    .filter(([patientId]) => !going.has(patientId))
    .map(([patientId, at]) => {
      const endedOn = ended.get(patientId) ?? dayAt(at, zone);
      const dueOn = addDays(endedOn, Math.ceil(years * 365.25));
      return { patientId, endedOn, hadEpisode: ended.has(patientId), dueOn };
    })
    .sort((one, other) => (one.endedOn < other.endedOn ? -1 : 1));
};

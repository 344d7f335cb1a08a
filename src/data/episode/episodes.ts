/** Episodes of care: opened once, changed by rows of their own, never edited. */
import { randomUUID } from 'node:crypto';
import { asc } from 'drizzle-orm';
import { closedStates, type Episode, type EpisodeState, type WantedChange } from '#core/episode/episode.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Access, knownRows, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { type ClosedItem, episode, episodeChange } from '../schema/care.ts';
import { careProfile } from '../schema/people.ts';

export type NewEpisode = Omit<Episode, 'id' | 'changes'>;

type EpisodeRow = typeof episode.$inferSelect;
type ChangeRow = typeof episodeChange.$inferSelect;

/** Stretches from their rows; rows come oldest first. */
export const episodesFrom = (
  rows: readonly EpisodeRow[],
  changes: readonly ChangeRow[],
): readonly Episode[] =>
  rows.map((row) => ({
    id: row.id,
    diagnoses: row.diagnoses,
    joints: row.joints as readonly Joint[],
    followedJoints: row.followedJoints as readonly Joint[],
    goals: row.goals,
    referrer: row.referrer,
    contacts: row.contacts,
    changes: changes
      .filter((change) => change.episodeId === row.id)
      .map(({ state, on, reason, breakKind, expectedBack, recordedAt, byName }) => ({
        to: state,
        on,
        reason,
        breakKind,
        expectedBack,
        recordedAt,
        by: byName,
      })),
  }));

export const episodeRows = patientQuery((db) =>
  db.select().from(episode).where(ofPatient(episode)).orderBy(asc(episode.recordedAt), asc(episode.id)),
);

export const episodeChangeRows = patientQuery((db) =>
  db
    .select()
    .from(episodeChange)
    .where(ofPatient(episodeChange))
    .orderBy(asc(episodeChange.recordedAt), asc(episodeChange.on)),
);

const reasonRows = patientQuery((db) =>
  db
    .select({
      diagnosis: careProfile.diagnosis,
      followedJoints: careProfile.followedJoints,
      recordedAt: careProfile.recordedAt,
    })
    .from(careProfile)
    .where(ofPatient(careProfile))
    .orderBy(asc(careProfile.version)),
);

type Reason = Awaited<ReturnType<typeof reasonRows>>[number];

/**
 * Why the patient comes stands once: what was put right while an episode went on is what that episode is about.
 * Further diagnoses and joints of the episode stay.
 */
const asPutRight = (
  episode: Episode,
  openedAt: number,
  nextOpenedAt: number,
  reasons: readonly Reason[],
): Episode => {
  const closedAt =
    episode.changes.find(({ to }) => closedStates.includes(to))?.recordedAt ?? Number.POSITIVE_INFINITY;
  const end = Math.min(closedAt, nextOpenedAt);
  const newest = reasons.findLast(({ recordedAt }) => recordedAt > openedAt && recordedAt < end);
  if (!newest) return episode;
  const followedJoints = newest.followedJoints as readonly Joint[];
  const further = episode.joints.filter((joint) => !episode.followedJoints.includes(joint));
  return {
    ...episode,
    diagnoses: [...new Set([newest.diagnosis, ...episode.diagnoses.slice(1)])],
    followedJoints,
    joints: [...new Set([...followedJoints, ...further])],
  };
};

export const episodesOf = async (access: Access, patientId: string): Promise<readonly Episode[]> => {
  const rows = knownRows(access, await episodeRows(access, patientId));
  if (rows.length === 0) return [];
  const changes = knownRows(access, await episodeChangeRows(access, patientId));
  const reasons = knownRows(access, await reasonRows(access, patientId));
  return episodesFrom(rows, changes).map((episode, place) =>
    asPutRight(
      episode,
      rows[place]!.recordedAt,
      rows[place + 1]?.recordedAt ?? Number.POSITIVE_INFINITY,
      reasons,
    ),
  );
};

/** Columns of a row written now by the caller. */
export const writtenNow = (access: Access, patientId: string) => ({
  id: randomUUID(),
  ...recordedFor(access, patientId),
  byName: access.actorName,
});

/**
 * The same, later than whatever stands before it, also where the clock was put back meanwhile or two write at one
 * instant: for rows of which the newest holds.
 */
export const writtenAfter = (access: Access, patientId: string, before: readonly number[]) => {
  const now = writtenNow(access, patientId);
  return { ...now, recordedAt: Math.max(now.recordedAt, ...before.map((at) => at + 1)) };
};

interface ChangeOf {
  readonly episodeId: string;
  readonly change: Omit<WantedChange, 'to'> & { readonly to: EpisodeState };
  readonly closedItems: readonly ClosedItem[];
}

/** Records a change that `checkChange` of the core has let through. */
export const changeEpisode = (access: Access, patientId: string, row: ChangeOf): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    const { to: state, ...rest } = row.change;
    await tx.insert(episodeChange).values({
      ...now,
      episodeId: row.episodeId,
      state,
      ...rest,
      closedItems: row.closedItems,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'episode-change', {
      subjectId: now.id,
      patientId,
      detail: { episodeId: row.episodeId, state, closed: row.closedItems.length },
    });
    return now.id;
  });

export const openEpisode = (
  access: Access,
  patientId: string,
  row: NewEpisode,
  reason: string,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(episode).values({ ...now, ...row });
    await auditWrite(tx, access, 'episode', { subjectId: now.id, patientId });
    const change = { to: 'open', on: access.day, reason, breakKind: null, expectedBack: null } as const;
    await changeEpisode(access, patientId, { episodeId: now.id, change, closedItems: [] });
    return now.id;
  });

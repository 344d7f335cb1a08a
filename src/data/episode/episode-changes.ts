/**
 * A change of an episode of care with what follows from it, in one transaction. The end of care ends
 * what is prescribed, the address of the calendar and the items of the worklist, each named in the row; the record stays readable,
 * and what a phone sends later is stored as before.
 */
import { and, eq } from 'drizzle-orm';
import { checkChange, closedStates, type Episode, type WantedChange } from '#core/episode/episode.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';

import { type Outcome, refuse } from '#core/outcome.ts';
import { dangers } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { endFeedIn } from '../exchange/calendar-feeds.ts';
import { endPrescription } from '../prescribing/prescribing.ts';
import { inForce, prescriptionsOf, unsigned } from '../prescribing/prescriptions.ts';
import { worklistItem } from '../schema/schema.ts';
import { changeEpisode, episodesOf } from './episodes.ts';

const openItems = (access: Access, patientId: string) =>
  access.store.read
    .select({
      key: worklistItem.key,
      kind: worklistItem.kind,
      since: worklistItem.since,
      acknowledgedBy: worklistItem.acknowledgedBy,
    })
    .from(worklistItem)
    .where(and(eq(worklistItem.clinicId, access.clinicId), eq(worklistItem.patientId, patientId)));

/** Whether nothing of the person's care goes on once the change holds. */
const endsCare = (
  episodes: readonly Episode[],
  episodeId: string,
  change: WantedChange,
  access: Access,
): boolean => {
  const changed = { ...change, recordedAt: access.now, by: access.actorName };
  const after = episodes.map((one) =>
    one.id === episodeId ? { ...one, changes: [...one.changes, changed] } : one,
  );
  return episodeStatusOn(after, access.day).state === 'closed';
};

const endPrescribed = async (access: Access, patientId: string, reason: string): Promise<void> => {
  const versions = await prescriptionsOf(access, patientId);
  for (const row of [...inForce(versions), ...unsigned(versions)])
    await endPrescription(access, patientId, row.id, reason);
};

/** Null when there is no such episode of care. */
export const applyEpisodeChange = (
  access: Access,
  patientId: string,
  episodeId: string,
  wanted: WantedChange,
): Promise<Outcome<{ readonly id: string; readonly closedItems: number }> | null> =>
  access.store.write(async (tx) => {
    const episodes = await episodesOf(access, patientId);
    const episode = episodes.find((one) => one.id === episodeId);
    if (!episode) return null;
    const checked = checkChange(episode, wanted, access.day);
    if (!checked.ok) return checked;
    const isEnd = closedStates.includes(wanted.to) && endsCare(episodes, episodeId, wanted, access);
    const open = isEnd ? await openItems(access, patientId) : [];
    const danger = open.find((row) => dangers.includes(row.kind) && row.acknowledgedBy === null);
    if (danger && wanted.to !== 'died') {
      return refuse(
        'to',
        'inconsistent',
        'An urgent item has not been acknowledged. Acknowledge or take it before care ends.',
      );
    }
    if (open.some((row) => row.kind === 'red-flag') && wanted.to !== 'died') {
      return refuse(
        'to',
        'inconsistent',
        'A warning sign is open. Record a contact that reached the patient, or the person who cares for the patient, before care ends.',
      );
    }
    if (isEnd) {
      await endPrescribed(access, patientId, `Care ended on ${wanted.on}: ${wanted.reason}`);
      await endFeedIn(tx, access, patientId, 'end-of-care');
    }
    const closedItems = open.map(({ key, kind, since }) => ({ key, kind, since }));
    const id = await changeEpisode(access, patientId, { episodeId, change: wanted, closedItems });
    return { ok: true, result: { id, closedItems: closedItems.length }, notes: [] };
  });

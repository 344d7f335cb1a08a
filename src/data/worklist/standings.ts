/**
 * Where each patient of a clinic stands, kept on write with the number of patients who stand so. The numbers
 * above the worklist are added up from a few states, however many patients there are. What a day or an hour
 * changes by itself is caught up with by whoever asks first.
 */
import { and, asc, eq, gt, inArray, lte, or, sql } from 'drizzle-orm';
import { type Kept, type Stands, standsAt, standsUntil } from '#core/worklist/standing.ts';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import { episodesFrom, episodesOf } from '../episode/episodes.ts';
import {
  episode,
  episodeChange,
  screening,
  worklistItem,
  worklistStanding,
  worklistTally,
} from '../schema/schema.ts';
import { screeningsOnRecord } from '../screening/screenings.ts';
import { byPatient } from './worklist-newest.ts';

export const keptStanding = patientQuery((db) =>
  db
    .select({
      stands: worklistStanding.stands,
      untilDay: worklistStanding.untilDay,
      untilAt: worklistStanding.untilAt,
    })
    .from(worklistStanding)
    .where(ofPatient(worklistStanding)),
);

/** One fewer stands as before, one more as now. */
const recount = async (tx: Db, clinicId: string, before: string | null, now: string): Promise<void> => {
  if (before === now) return;
  const gone = before === null ? [] : [{ clinicId, stands: before, patients: -1 }];
  await tx
    .insert(worklistTally)
    .values([...gone, { clinicId, stands: now, patients: 1 }])
    .onConflictDoUpdate({
      target: [worklistTally.clinicId, worklistTally.stands],
      set: { patients: sql`${worklistTally.patients} + excluded.patients` },
    });
  if (before === null) return;
  const nobody = and(eq(worklistTally.clinicId, clinicId), eq(worklistTally.stands, before));
  await tx.delete(worklistTally).where(and(nobody, lte(worklistTally.patients, 0)));
};

/** Most writes leave a patient where he or she stood. */
const keepStanding = async (tx: Db, access: Access, patientId: string, kept: Kept): Promise<void> => {
  const { clinicId, day, now: instant } = access;
  const [before] = await keptStanding(access, patientId);
  const stands = JSON.stringify(standsAt(kept, { instant, day }));
  const next = standsUntil(kept, { instant, day });
  const row = { stands, untilDay: next.day, untilAt: next.instant };
  if (before && JSON.stringify(before) === JSON.stringify(row)) return;
  await tx
    .insert(worklistStanding)
    .values({ patientId, clinicId, ...row })
    .onConflictDoUpdate({ target: worklistStanding.patientId, set: row });
  await recount(tx, clinicId, before?.stands ?? null, stands);
};

/** With the items as they are now. */
export const keepStandingWith = async (
  tx: Db,
  access: Access,
  patientId: string,
  items: Kept['items'],
): Promise<void> => {
  const isScreened = (await screeningsOnRecord(access, patientId)).length > 0;
  await keepStanding(tx, access, patientId, {
    items,
    isScreened,
    episodes: await episodesOf(access, patientId),
  });
};

/** What the states of some patients are worked out from, in a fixed number of queries. */
const keptOf = async (tx: Db, { clinicId }: Access, ids: readonly string[]) => {
  const among = sql`(SELECT value FROM json_each(${JSON.stringify(ids)}))`;
  const items = byPatient(
    await tx
      .select()
      .from(worklistItem)
      .where(and(eq(worklistItem.clinicId, clinicId), inArray(worklistItem.patientId, among))),
  );
  const screened = new Set(
    (
      await tx
        .selectDistinct({ id: screening.patientId })
        .from(screening)
        .where(and(eq(screening.clinicId, clinicId), inArray(screening.patientId, among)))
    ).map(({ id }) => id),
  );
  const episodes = byPatient(
    await tx
      .select()
      .from(episode)
      .where(and(eq(episode.clinicId, clinicId), inArray(episode.patientId, among)))
      .orderBy(asc(episode.recordedAt), asc(episode.id)),
  );
  const changes = byPatient(
    await tx
      .select()
      .from(episodeChange)
      .where(and(eq(episodeChange.clinicId, clinicId), inArray(episodeChange.patientId, among)))
      .orderBy(asc(episodeChange.recordedAt), asc(episodeChange.on)),
  );
  return (id: string): Kept => ({
    items: items.get(id) ?? [],
    isScreened: screened.has(id),
    episodes: episodesFrom(episodes.get(id) ?? [], changes.get(id) ?? []),
  });
};

const keepStandingsOf = async (tx: Db, access: Access, ids: readonly string[]): Promise<void> => {
  const kept = await keptOf(tx, access, ids);
  for (const id of ids) await keepStanding(tx, access, id, kept(id));
};

/** Counts these patients of the clinic anew, and nobody else. */
export const standAnew = async (tx: Db, access: Access, ids: readonly string[]): Promise<void> => {
  for (const table of [worklistStanding, worklistTally])
    await tx.delete(table).where(eq(table.clinicId, access.clinicId));
  await keepStandingsOf(tx, access, ids);
};

const outdatedRows = prepared((db) =>
  db
    .select({ id: worklistStanding.patientId })
    .from(worklistStanding)
    .where(
      and(
        ofClinic(worklistStanding),
        or(
          lte(worklistStanding.untilDay, sql.placeholder('day')),
          lte(worklistStanding.untilAt, sql.placeholder('now')),
        ),
      ),
    ),
);

const outdated = async ({ store, clinicId, day, now }: Access): Promise<readonly string[]> => {
  const rows = await outdatedRows(store.read, { clinicId, day, now });
  return rows.map(({ id }) => id);
};

/** How many patients stand alike. */
export interface Tally {
  readonly stands: Stands;
  readonly patients: number;
}

const parsed = new Map<string, Stands>();
/** Few are in use at a time; each day leaves some behind. */
const mostParsed = 5000;

const standsFrom = (text: string): Stands => {
  const found = parsed.get(text) ?? (JSON.parse(text) as Stands);
  if (parsed.size >= mostParsed) parsed.clear();
  parsed.set(text, found);
  return found;
};

const tallyRows = prepared((db) =>
  db
    .select({ stands: worklistTally.stands, patients: worklistTally.patients })
    .from(worklistTally)
    .where(and(ofClinic(worklistTally), gt(worklistTally.patients, 0))),
);

/** Every patient of the clinic by where he or she stands now. */
export const talliesOf = async (access: Access): Promise<readonly Tally[]> => {
  const late = await outdated(access);
  if (late.length > 0)
    await access.store.write(async (tx) => keepStandingsOf(tx, access, await outdated(access)));
  const rows = await tallyRows(access.store.read, { clinicId: access.clinicId });
  return rows.map(({ stands, patients }) => ({ stands: standsFrom(stands), patients }));
};

/** Where some patients stand, as kept; after `talliesOf` it is how they stand now. */
export const standingsOf = async (
  { store, clinicId }: Access,
  ids: readonly string[],
): Promise<readonly Stands[]> => {
  if (ids.length === 0) return [];
  const among = sql`(SELECT value FROM json_each(${JSON.stringify(ids)}))`;
  const rows = await store.read
    .select({ stands: worklistStanding.stands })
    .from(worklistStanding)
    .where(and(eq(worklistStanding.clinicId, clinicId), inArray(worklistStanding.patientId, among)));
  return rows.map(({ stands }) => standsFrom(stands));
};

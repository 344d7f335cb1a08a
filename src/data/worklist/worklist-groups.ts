/** Every patient of a clinic with the group of the worklist he or she stands in, for one reader. */
import { and, asc, eq, gt, lte, min, sql } from 'drizzle-orm';
import { closedStates } from '#core/episode/episode.ts';
import type { Day } from '#core/time/day.ts';
import { groupOf, isSnoozed, type WorklistGroup } from '#core/worklist/groups.ts';
import { dangers } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { episode, episodeChange, patientIdentity, screening, worklistItem } from '../schema/schema.ts';

export interface GroupLine {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly group: WorklistGroup;
  /** Colleagues who have the items of an assigned patient. */
  readonly assignedNames: readonly string[];
  /** First day on which something of a snoozed or paused patient comes back. */
  readonly until: Day | null;
  /** Snoozed items, for bringing them back. */
  readonly snoozedKeys: readonly string[];
}

const dueRows = (access: Access) =>
  access.store.read
    .select({
      patientId: worklistItem.patientId,
      key: worklistItem.key,
      kind: worklistItem.kind,
      assignedTo: worklistItem.assignedTo,
      assignedName: worklistItem.assignedName,
      snoozedUntil: worklistItem.snoozedUntil,
    })
    .from(worklistItem)
    .where(
      and(
        eq(worklistItem.clinicId, access.clinicId),
        lte(worklistItem.showsFrom, access.day),
        sql`(${worklistItem.showsAt} IS NULL OR ${worklistItem.showsAt} <= ${access.now})`,
      ),
    );

/** Patients with a pause whose day to look at is still ahead, with the first of those days. */
const pausedUntil = async (access: Access): Promise<ReadonlyMap<string, Day>> => {
  const rows = await access.store.read
    .select({ patientId: worklistItem.patientId, until: min(worklistItem.showsFrom) })
    .from(worklistItem)
    .where(
      and(
        eq(worklistItem.clinicId, access.clinicId),
        eq(worklistItem.kind, 'resume-due'),
        gt(worklistItem.showsFrom, access.day),
      ),
    )
    .groupBy(worklistItem.patientId);
  return new Map(rows.flatMap(({ patientId, until }) => (until === null ? [] : [[patientId, until]])));
};

/** Patients all of whose episodes have ended. */
const dischargedIds = async (access: Access): Promise<ReadonlySet<string>> => {
  const rows = await access.store.read
    .select({ patientId: episode.patientId, episodeId: episode.id, state: episodeChange.state })
    .from(episode)
    .innerJoin(episodeChange, eq(episodeChange.episodeId, episode.id))
    .where(and(eq(episode.clinicId, access.clinicId), lte(episodeChange.on, access.day)))
    .orderBy(asc(episodeChange.recordedAt), asc(episodeChange.on));
  const newest = new Map(rows.map((row) => [row.episodeId, row]));
  const going = new Set(
    [...newest.values()].filter(({ state }) => !closedStates.includes(state)).map((row) => row.patientId),
  );
  return new Set([...newest.values()].map((row) => row.patientId).filter((id) => !going.has(id)));
};

const byPatient = <R extends { readonly patientId: string }>(rows: readonly R[]) => {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const known = groups.get(row.patientId);
    if (known) known.push(row);
    else groups.set(row.patientId, [row]);
  }
  return groups;
};

const peopleByName = (access: Access) =>
  access.store.read
    .select({
      patientId: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
    })
    .from(patientIdentity)
    .where(eq(patientIdentity.clinicId, access.clinicId))
    .orderBy(asc(patientIdentity.familyName), asc(patientIdentity.givenName));

const screenedIds = async (access: Access): Promise<ReadonlySet<string>> => {
  const rows = await access.store.read
    .selectDistinct({ id: screening.patientId })
    .from(screening)
    .where(eq(screening.clinicId, access.clinicId));
  return new Set(rows.map(({ id }) => id));
};

/** `closed`: records kept to teams the reader is not in; of those only danger counts. */
export const groupLines = async (
  access: Access,
  closed: ReadonlySet<string>,
): Promise<readonly GroupLine[]> => {
  const people = await peopleByName(access);
  const due = byPatient(
    (await dueRows(access)).filter(({ patientId, kind }) => !closed.has(patientId) || dangers.includes(kind)),
  );
  const screened = await screenedIds(access);
  const discharged = await dischargedIds(access);
  const paused = await pausedUntil(access);
  return people.flatMap((person): GroupLine[] => {
    const items = due.get(person.patientId) ?? [];
    const standing = {
      due: items,
      isPaused: paused.has(person.patientId),
      isScreened: screened.has(person.patientId),
      isDischarged: discharged.has(person.patientId),
      isMine: !closed.has(person.patientId),
    };
    const group = groupOf(standing, access.actorId, access.day);
    if (group === null) return [];
    const snoozed = items.filter((item) => isSnoozed(item, access.day));
    return [
      {
        ...person,
        group,
        assignedNames: [...new Set(items.flatMap(({ assignedName }) => assignedName ?? []))].sort(),
        until:
          group === 'paused'
            ? (paused.get(person.patientId) ?? null)
            : (snoozed.flatMap(({ snoozedUntil }) => snoozedUntil ?? []).sort()[0] ?? null),
        snoozedKeys: snoozed.map(({ key }) => key),
      },
    ];
  });
};

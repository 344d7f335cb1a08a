/** Group hours of the clinic, each with the entries it was written by, who belongs to it and whether it stands. */
import { randomUUID } from 'node:crypto';
import { asc, sql } from 'drizzle-orm';
import {
  beginOf,
  type GroupChange,
  type GroupHour,
  type GroupHourEntry,
  type GroupHourOnRecord,
  type GroupMember,
  type GroupState,
  groupHoursFrom,
} from '#core/clinic/group-hour.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { groupHour, groupHourChange, groupMember } from '../schema/schema.ts';

const entryRows = prepared((db) =>
  db.select().from(groupHour).where(ofClinic(groupHour)).orderBy(asc(groupHour.recordedAt)),
);

const changeRows = prepared((db) =>
  db
    .select()
    .from(groupHourChange)
    .where(ofClinic(groupHourChange))
    .orderBy(asc(groupHourChange.recordedAt), asc(groupHourChange.version)),
);

const memberRows = prepared((db) =>
  db
    .select()
    .from(groupMember)
    .where(ofClinic(groupMember))
    .orderBy(asc(groupMember.recordedAt), asc(sql`rowid`)),
);

const entryFrom = (row: typeof groupHour.$inferSelect): GroupHourEntry => ({
  hourId: row.hourId,
  version: row.version,
  name: row.name,
  place: row.place,
  when: `${row.day}T${row.time}`,
  minutes: row.minutes,
  clinicianId: row.clinicianId,
  clinicianName: row.clinicianName,
  writtenAt: row.recordedAt,
  writtenBy: row.byName,
});

const changeFrom = (row: typeof groupHourChange.$inferSelect): GroupChange => ({
  hourId: row.hourId,
  state: row.state,
  reason: row.reason,
  at: row.recordedAt,
  by: row.byName,
});

const memberFrom = (row: typeof groupMember.$inferSelect): GroupMember => ({
  hourId: row.hourId,
  patientId: row.patientId,
  belongs: row.belongs,
  at: row.recordedAt,
  by: row.byName,
});

/** All of the clinic, by when they begin. */
export const groupHoursOf = async ({ clinicId, store }: Access): Promise<readonly GroupHourOnRecord[]> =>
  groupHoursFrom(
    (await entryRows(store.read, { clinicId })).map(entryFrom),
    (await changeRows(store.read, { clinicId })).map(changeFrom),
    (await memberRows(store.read, { clinicId })).map(memberFrom),
  );

const writtenBy = ({ clinicId, now, actorId, actorName }: Access) => ({
  id: randomUUID(),
  clinicId,
  recordedAt: now,
  recordedBy: actorId,
  byName: actorName,
});

export interface WrittenHour {
  readonly row: GroupHour;
  readonly clinicianName: string;
  /** The hour whose entry it stands in the place of; null = a new one. */
  readonly replaces: GroupHourOnRecord | null;
  /** Of a new one; left out = one is made. */
  readonly id?: string;
}

/** Inside the caller's write, so that what it replaces is still the one that counts. */
export const writeGroupHour = (
  access: Access,
  { row, clinicianName, replaces, id = randomUUID() }: WrittenHour,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = { ...writtenBy(access), ...(replaces ? {} : { id }) };
    const { when: _, ...rest } = row;
    const hourId = replaces?.id ?? now.id;
    const version = (replaces?.entry.version ?? 0) + 1;
    await tx.insert(groupHour).values({ ...now, ...rest, ...beginOf(row), clinicianName, hourId, version });
    await auditWrite(tx, access, 'group-hour', { subjectId: hourId, detail: { version } });
    return hourId;
  });

export const changeGroupHour = (
  access: Access,
  { id: hourId, changes }: GroupHourOnRecord,
  state: GroupState,
  reason: string,
): Promise<void> =>
  access.store.write(async (tx) => {
    const version = changes.length + 1;
    await tx.insert(groupHourChange).values({ ...writtenBy(access), hourId, version, state, reason });
    await auditWrite(tx, access, 'group-hour-change', { subjectId: hourId, detail: { state } });
  });

/** Puts somebody into the group, or takes the person out; what was entered in the hour stays. */
export const setGroupMember = (
  access: Access,
  hourId: string,
  patientId: string,
  belongs: boolean,
): Promise<void> =>
  access.store.write(async (tx) => {
    await tx.insert(groupMember).values({ ...writtenNow(access, patientId), hourId, belongs });
    await auditWrite(tx, access, 'group-member', { subjectId: hourId, patientId, detail: { belongs } });
  });

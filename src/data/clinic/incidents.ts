/** Incidents of the clinic, each with the entries it was written by and whether it is open. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq, inArray } from 'drizzle-orm';
import {
  type Incident,
  type IncidentEntry,
  type IncidentOnRecord,
  type IncidentState,
  incidentsFrom,
} from '#core/clinic/incident.ts';
import { dateTimeParts } from '#core/time/date-time.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { closedToMe, mayOpen } from '../patients/care-team.ts';
import { incident, incidentChange, patientIdentity } from '../schema/schema.ts';

const entryRows = prepared((db) =>
  db.select().from(incident).where(ofClinic(incident)).orderBy(asc(incident.recordedAt)),
);

const changeRows = prepared((db) =>
  db
    .select()
    .from(incidentChange)
    .where(ofClinic(incidentChange))
    .orderBy(asc(incidentChange.recordedAt), asc(incidentChange.version)),
);

const entryFrom = (row: typeof incident.$inferSelect): IncidentEntry => ({
  incidentId: row.incidentId,
  version: row.version,
  patientId: row.patientId,
  when: row.time === null ? row.day : `${row.day}T${row.time}`,
  kind: row.kind,
  happened: row.happened,
  doneAtOnce: row.doneAtOnce,
  wouldPrevent: row.wouldPrevent,
  told: row.told,
  writtenAt: row.recordedAt,
  writtenBy: row.byName,
});

/** All of the clinic, the latest first. */
export const incidentsOf = async (access: Access): Promise<readonly IncidentOnRecord[]> => {
  const { clinicId, store } = access;
  const entries = (await entryRows(store.read, { clinicId })).map(entryFrom);
  const changes = (await changeRows(store.read, { clinicId })).map((row) => ({
    incidentId: row.incidentId,
    state: row.state,
    reason: row.reason,
    at: row.recordedAt,
    by: row.byName,
  }));
  return incidentsFrom(entries, changes);
};

/** Names of those patients whose records the caller, a clinician, may open; who was erased has none. */
export const namesOpenToMe = async (
  access: Access,
  patientIds: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const closed = await closedToMe(access);
  const open: string[] = [];
  for (const id of new Set(patientIds)) if (!closed.has(id) || (await mayOpen(access, id))) open.push(id);
  const rows = await access.store.read
    .select()
    .from(patientIdentity)
    .where(and(eq(patientIdentity.clinicId, access.clinicId), inArray(patientIdentity.patientId, open)));
  return new Map(rows.map((row) => [row.patientId, `${row.givenName} ${row.familyName}`]));
};

const writtenBy = ({ clinicId, now, actorId, actorName }: Access) => ({
  id: randomUUID(),
  clinicId,
  recordedAt: now,
  recordedBy: actorId,
  byName: actorName,
});

export interface Written {
  readonly patientId: string | null;
  readonly row: Incident;
  /** The incident whose entry it stands in the place of; null = a new one. */
  readonly replaces: IncidentOnRecord | null;
}

/** Inside the caller's write, so that what it replaces is still the one that counts. */
export const writeIncident = (access: Access, { patientId, row, replaces }: Written): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenBy(access);
    const { when, ...rest } = row;
    const { day, time } = dateTimeParts(when)!;
    const incidentId = replaces?.id ?? now.id;
    const version = (replaces?.entry.version ?? 0) + 1;
    await tx.insert(incident).values({ ...now, ...rest, patientId, incidentId, version, day, time });
    await auditWrite(tx, access, 'incident', {
      subjectId: incidentId,
      patientId,
      detail: { version, kind: row.kind },
    });
    return incidentId;
  });

export const changeIncident = (
  access: Access,
  { id: incidentId, entry, changes }: IncidentOnRecord,
  state: IncidentState,
  reason: string,
): Promise<void> =>
  access.store.write(async (tx) => {
    const { patientId } = entry;
    const version = changes.length + 1;
    const now = writtenBy(access);
    await tx.insert(incidentChange).values({ ...now, patientId, incidentId, version, state, reason });
    await auditWrite(tx, access, 'incident-change', { subjectId: incidentId, patientId, detail: { state } });
  });

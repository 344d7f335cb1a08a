/** Weekly programmes, as versions. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq, max, sql } from 'drizzle-orm';
import type { Programme, ProgrammeItem } from '#core/prescribing/programme/planned-sessions.ts';
import { type Access, knownRows, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import { programme } from '../schema/schema.ts';

export const programmeRows = patientQuery((db) =>
  db
    .select({
      version: programme.version,
      fromDay: programme.fromDay,
      lines: programme.items,
      recordedAt: programme.recordedAt,
    })
    .from(programme)
    .where(ofPatient(programme))
    .orderBy(asc(programme.version)),
);

export const programmesOf = async (access: Access, patientId: string): Promise<readonly Programme[]> => {
  return knownRows(access, await programmeRows(access, patientId));
};

const programmeRowsOfEach = prepared((db) =>
  db
    .select({
      patientId: programme.patientId,
      version: programme.version,
      fromDay: programme.fromDay,
      lines: programme.items,
    })
    .from(programme)
    .where(
      and(
        ofClinic(programme),
        sql`${programme.patientId} IN (SELECT value FROM json_each(${sql.placeholder('ids')}))`,
      ),
    ),
);

/** Every version of each of these patients, in one query. */
export const programmesOfEach = async (
  { store, clinicId }: Access,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly Programme[]>> => {
  const rows = await programmeRowsOfEach(store.read, { clinicId, ids: JSON.stringify(ids) });
  const found = new Map<string, Programme[]>();
  for (const row of rows) found.set(row.patientId, [...(found.get(row.patientId) ?? []), row]);
  return found;
};

export const saveProgramme = (
  access: Access,
  patientId: string,
  items: readonly ProgrammeItem[],
): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: max(programme.version) })
      .from(programme)
      .where(and(eq(programme.clinicId, access.clinicId), eq(programme.patientId, patientId)));
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(programme).values({
      id,
      ...recordedFor(access, patientId),
      version,
      fromDay: access.day,
      items: items,
    });
    await auditWrite(tx, access, 'programme', {
      subjectId: id,
      patientId,
      detail: { version, items: items.length },
    });
    return version;
  });

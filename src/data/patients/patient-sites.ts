/** Where a patient usually comes; the newest row counts. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { patientSite, site } from '../schema/schema.ts';

/** A query for the ids of the patients whose newest site it is. */
export const patientsOfSite = (access: Access, siteId: string) => {
  const { read } = access.store;
  const newest = read
    .select({
      patientId: patientSite.patientId,
      siteId: patientSite.siteId,
      place:
        sql<number>`row_number() over (partition by ${patientSite.patientId} order by ${patientSite.recordedAt} desc, ${patientSite.id} desc)`.as(
          'place',
        ),
    })
    .from(patientSite)
    .where(eq(patientSite.clinicId, access.clinicId))
    .as('newest_site');
  return read
    .select({ patientId: newest.patientId })
    .from(newest)
    .where(and(eq(newest.place, 1), eq(newest.siteId, siteId)));
};

export const siteOf = async (access: Access, patientId: string): Promise<string | null> => {
  const [row] = await access.store.read
    .select({ siteId: patientSite.siteId })
    .from(patientSite)
    .where(and(eq(patientSite.clinicId, access.clinicId), eq(patientSite.patientId, patientId)))
    .orderBy(desc(patientSite.recordedAt), desc(patientSite.id))
    .limit(1);
  return row?.siteId ?? null;
};

/** False when the clinic has no such site. */
export const setSite = (access: Access, patientId: string, siteId: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const { clinicId } = access;
    const [known] = await tx
      .select({ id: site.id })
      .from(site)
      .where(and(eq(site.clinicId, clinicId), eq(site.id, siteId)));
    if (!known) return false;
    const id = randomUUID();
    await tx.insert(patientSite).values({
      id,
      clinicId,
      patientId,
      siteId,
      recordedAt: access.now,
      recordedBy: access.actorId,
      byName: access.actorName,
    });
    await auditWrite(tx, access, 'patient-site', { subjectId: id, patientId });
    return true;
  });

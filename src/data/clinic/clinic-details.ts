/** What the clinic says of itself to patients: changed one by one, each change with what stood before. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq } from 'drizzle-orm';
import type { ClinicDetail } from '#core/clinic/clinic-details.ts';
import type { MonitoringHours } from '#core/episode/monitoring-hours.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { clinicChanged } from '../changed.ts';
import { clinic, clinicDetailChange } from '../schema/schema.ts';

export interface DetailChange {
  readonly detail: ClinicDetail;
  readonly before: string | null;
  readonly after: string;
  readonly at: number;
  readonly by: string;
}

/** Newest first. */
export const detailChanges = async (access: Access): Promise<readonly DetailChange[]> => {
  const rows = await access.store.read
    .select()
    .from(clinicDetailChange)
    .where(eq(clinicDetailChange.clinicId, access.clinicId))
    .orderBy(desc(clinicDetailChange.recordedAt), desc(clinicDetailChange.id));
  return rows.map(({ detail, before, after, recordedAt, byName }) => ({
    detail,
    before,
    after,
    at: recordedAt,
    by: byName,
  }));
};

type Row = typeof clinic.$inferSelect;

/** As it is compared and kept in the list of changes. */
const detailText = (row: Row, detail: ClinicDetail): string | null => {
  switch (detail) {
    case 'name':
      return row.name;
    case 'phone':
      return row.phone;
    case 'urgent-number':
      return row.urgentNumber;
    case 'emergency-number':
      return row.emergencyNumber;
    case 'monitoring-hours':
      return JSON.stringify(row.monitoringHours);
  }
};

const columnsOf = (detail: ClinicDetail, after: string): Partial<Row> => {
  switch (detail) {
    case 'name':
      return { name: after };
    case 'phone':
      return { phone: after };
    case 'urgent-number':
      return { urgentNumber: after };
    case 'emergency-number':
      return { emergencyNumber: after };
    case 'monitoring-hours':
      return { monitoringHours: JSON.parse(after) as MonitoringHours };
  }
};

export interface DetailEntry {
  readonly detail: ClinicDetail;
  /** What stood on the page of whoever changes it. */
  readonly seen: string | null;
  readonly after: string;
}

/** Null when it was entered; else the change of a colleague that came between, which stays. */
export const enterClinicDetail = (access: Access, entry: DetailEntry): Promise<DetailChange | null> =>
  access.store.write(async (tx) => {
    const { detail, seen, after } = entry;
    const [row] = await tx.select().from(clinic).where(eq(clinic.id, access.clinicId));
    const before = detailText(row!, detail);
    if (before !== seen) {
      const [last] = await tx
        .select()
        .from(clinicDetailChange)
        .where(and(eq(clinicDetailChange.clinicId, access.clinicId), eq(clinicDetailChange.detail, detail)))
        .orderBy(desc(clinicDetailChange.recordedAt), desc(clinicDetailChange.id))
        .limit(1);
      return {
        detail,
        before: seen,
        after: before ?? '',
        at: last?.recordedAt ?? access.now,
        by: last?.byName ?? '',
      };
    }
    const id = randomUUID();
    await tx.update(clinic).set(columnsOf(detail, after)).where(eq(clinic.id, access.clinicId));
    await tx.insert(clinicDetailChange).values({
      id,
      clinicId: access.clinicId,
      detail,
      before,
      after,
      recordedAt: access.now,
      recordedBy: access.actorId,
      byName: access.actorName,
    });
    // Every phone of the clinic shows it.
    clinicChanged(access);
    await auditWrite(tx, access, 'clinic-detail', { subjectId: id, detail: { detail } });
    return null;
  });

/** Appointments: where they happen, who is present, and where to ring back. */
import { and, desc, eq } from 'drizzle-orm';
import type { VisitPlace } from '#core/episode/remote-visit.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { visit } from '../schema/care.ts';
import { writtenNow } from './episodes.ts';

export interface Visit {
  readonly place: VisitPlace;
  readonly whereabouts: string | null;
  readonly callBackPhone: string | null;
  readonly present: readonly string[];
}

export type RecordedVisit = Visit & {
  readonly id: string;
  readonly day: string;
  readonly recordedAt: number;
  readonly byName: string;
};

export const visitsOf = async (access: Access, patientId: string): Promise<readonly RecordedVisit[]> => {
  const rows = await access.store.read
    .select()
    .from(visit)
    .where(and(eq(visit.clinicId, access.clinicId), eq(visit.patientId, patientId)))
    .orderBy(desc(visit.recordedAt))
    .limit(100);
  return rows.map(({ clinicId: _clinic, patientId: _patient, recordedBy: _by, ...row }) => row);
};

/** The caller's own appointment with the patient today: the newest one begun. */
export const visitNow = async (access: Access, patientId: string): Promise<RecordedVisit | null> => {
  const [row] = await access.store.read
    .select()
    .from(visit)
    .where(
      and(
        eq(visit.clinicId, access.clinicId),
        eq(visit.patientId, patientId),
        eq(visit.recordedBy, access.actorId),
        eq(visit.day, access.day),
      ),
    )
    .orderBy(desc(visit.recordedAt))
    .limit(1);
  return row ?? null;
};

export const beginVisit = (access: Access, patientId: string, row: Visit): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(visit).values({ ...now, day: access.day, ...row });
    await auditWrite(tx, access, 'visit', {
      subjectId: now.id,
      patientId,
      detail: { place: row.place, present: row.present.length },
    });
    return now.id;
  });

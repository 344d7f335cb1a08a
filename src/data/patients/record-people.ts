/** Who wrote in a record and who opened it, by the ids that its rows name. */
import { and, asc, eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { audit, authUser } from '../schema/schema.ts';

export interface SignsIn {
  readonly id: string;
  readonly name: string;
  readonly role: 'clinician' | 'administrator' | 'reception' | 'patient';
  /** The record a patient's sign-in belongs to; null for staff. */
  readonly patientId: string | null;
}

/** Everybody who signs in at the clinic, or did. */
export const signInsOf = (access: Access): Promise<readonly SignsIn[]> =>
  Promise.resolve(
    access.store.read
      .select({ id: authUser.id, name: authUser.name, role: authUser.role, patientId: authUser.patientId })
      .from(authUser)
      .where(eq(authUser.clinicId, access.clinicId))
      .orderBy(asc(authUser.id)),
  );

export interface AuditedRow {
  readonly sequence: number;
  readonly at: number;
  readonly actorId: string;
  readonly act: string;
  readonly subject: string;
}

/** What is in the file of a person's audit, oldest first; older rows may have been moved to an archive. */
export const auditedOf = (access: Access, patientId: string): Promise<readonly AuditedRow[]> =>
  Promise.resolve(
    access.store.read
      .select({
        sequence: audit.sequence,
        at: audit.at,
        actorId: audit.actorId,
        act: audit.act,
        subject: audit.subject,
      })
      .from(audit)
      .where(and(eq(audit.clinicId, access.clinicId), eq(audit.patientId, patientId)))
      .orderBy(asc(audit.sequence)),
  );

/** The number patients ring when nobody answers at the clinic. */
import { eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { clinicChanged } from '../changed.ts';
import { clinic } from '../schema/schema.ts';

export const enterUrgentNumber = (access: Access, urgentNumber: string): Promise<void> =>
  access.store.write(async (tx) => {
    await tx.update(clinic).set({ urgentNumber }).where(eq(clinic.id, access.clinicId));
    // Every phone of the clinic shows it.
    clinicChanged(access);
    await auditWrite(tx, access, 'urgent-number', {
      subjectId: access.clinicId,
      detail: { urgentNumber },
    });
  });

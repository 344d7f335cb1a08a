/** Attempts to speak with the patient. Only one that reached somebody ends the signs it names. */
import type { Reached } from '#core/danger/danger.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { writtenNow } from '../episode/episodes.ts';
import { changedForPerson } from '../patients/changed-for-person.ts';
import { contactAttempt } from '../schema/schema.ts';

export interface NewContact {
  readonly signIds: readonly string[];
  readonly decisionIds: readonly string[];
  readonly reached: Reached;
  readonly found: string | null;
  readonly advised: string | null;
  readonly referredTo: string | null;
  readonly nextAt: number | null;
}

export const recordContact = (access: Access, patientId: string, row: NewContact): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(contactAttempt).values({ ...now, ...row });
    await changedForPerson(access, patientId);
    await auditWrite(tx, access, 'contact-attempt', {
      subjectId: now.id,
      patientId,
      detail: { reached: row.reached, signs: row.signIds.length, decisions: row.decisionIds.length },
    });
    return now.id;
  });

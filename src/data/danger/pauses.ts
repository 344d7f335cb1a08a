/** Pauses a clinician makes, and what a clinician resumes. */
import type { Pause } from '#core/danger/danger.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { writtenNow } from '../episode/episodes.ts';
import { changedForPerson } from '../patients/changed-for-person.ts';
import { pause, pauseResumption } from '../schema/schema.ts';

export type NewPause = Pick<Pause, 'joint' | 'reason' | 'until'> & {
  readonly cause: Exclude<Pause['cause'], 'warning-sign'>;
};

export const addPause = (access: Access, patientId: string, row: NewPause): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(pause).values({ ...now, ...row, signId: null });
    await changedForPerson(access, patientId);
    await auditWrite(tx, access, 'pause', {
      subjectId: now.id,
      patientId,
      detail: { cause: row.cause, joint: row.joint },
    });
    return now.id;
  });

/** `itemId` null = the pause is over. */
export const resume = (
  access: Access,
  patientId: string,
  row: { readonly pauseId: string; readonly itemId: string | null; readonly reason: string },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(pauseResumption).values({ ...now, ...row });
    await changedForPerson(access, patientId);
    await auditWrite(tx, access, 'pause-resumption', {
      subjectId: now.id,
      patientId,
      detail: { pauseId: row.pauseId, itemId: row.itemId },
    });
    return now.id;
  });

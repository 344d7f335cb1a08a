/**
 * One morning answered on two phones: the patient says which answers count. A new row with these answers
 * amends the other entry; both rows stay, and warning signs told in either stay told.
 */
import { createHash, randomUUID } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import { addDays } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { evaluateRecord } from '../decision/evaluate.ts';
import { morning } from '../schema/schema.ts';
import { insertCopy } from './confirm-entry.ts';
import { morningsOf } from './logs.ts';
import { morningsOfDay } from './mornings-of-day.ts';

/** Both by their entry ids. */
export interface KeptMorning {
  readonly keep: string;
  readonly instead: string;
}

/** False when they are not both answers of today between which nobody has chosen yet. */
export const keepMorning = (
  access: Access,
  patientId: string,
  { keep, instead }: KeptMorning,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const standing = await morningsOf(access, patientId, addDays(access.day, -1));
    const open = (await morningsOfDay(access, patientId, access.day, standing))
      .filter(({ isAmendment }) => !isAmendment)
      .map(({ entryId }) => entryId);
    if (keep === instead || !open.includes(keep) || !open.includes(instead)) return false;
    const [row] = await tx
      .select()
      .from(morning)
      .where(
        and(
          eq(morning.clinicId, access.clinicId),
          eq(morning.patientId, patientId),
          eq(morning.entryId, keep),
        ),
      );
    if (!row) return false;
    const id = await insertCopy(tx, row, {
      ...row,
      id: randomUUID(),
      entryId: `kept-${instead}`,
      digest: createHash('sha256').update(`${row.digest} in place of ${instead}`).digest('hex'),
      amends: instead,
      enteredBy: access.actorId,
      arrivedAt: access.now,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'morning-kept', { subjectId: id, patientId, detail: { instead } });
    await evaluateRecord(access, patientId, { cause: 'amendment', sessionId: null, morningId: id });
    return true;
  });

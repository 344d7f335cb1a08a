/** Merging two records, undoing it, and choosing whose prescriptions stay in force. Each is a row. */
import { randomUUID } from 'node:crypto';
import { and, eq, max } from 'drizzle-orm';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import type { Db } from '../database/connection.ts';
import { endPrescription } from '../prescribing/prescribing.ts';
import { inForce, prescriptionsOf, unsigned } from '../prescribing/prescriptions.ts';
import { patientMerge } from '../schema/schema.ts';
import { mergedWith, mergesOf } from './merges.ts';

type Act = Pick<typeof patientMerge.$inferInsert, 'act' | 'intoId' | 'keptId' | 'reason'>;

const append = async (tx: Db, access: Access, patientId: string, act: Act): Promise<void> => {
  const [last] = await tx
    .select({ version: max(patientMerge.version) })
    .from(patientMerge)
    .where(and(eq(patientMerge.clinicId, access.clinicId), eq(patientMerge.patientId, patientId)));
  const id = randomUUID();
  await tx.insert(patientMerge).values({
    id,
    ...recordedFor(access, patientId),
    byName: access.actorName,
    version: (last?.version ?? 0) + 1,
    ...act,
  });
  await auditWrite(tx, access, 'patient-merge', {
    subjectId: id,
    patientId,
    detail: { act: act.act, into: act.intoId, kept: act.keptId ?? null },
  });
  changed(access, patientId);
  changed(access, act.intoId);
};

export type Merged = 'merged' | 'same-record' | 'other-merged' | 'shown-merged' | 'other-shown';

/** Marks `otherId` as merged into the record shown. One step only: neither stands behind a third record. */
export const mergeRecords = (
  access: Access,
  shownId: string,
  otherId: string,
  reason: string,
): Promise<Merged> =>
  access.store.write(async (tx) => {
    if (otherId === shownId) return 'same-record';
    if ((await mergesOf(access, shownId)).mergedInto) return 'shown-merged';
    const other = await mergesOf(access, otherId);
    if (other.mergedInto) return 'other-merged';
    if (other.merges.length > 0) return 'other-shown';
    await append(tx, access, otherId, { act: 'merged', intoId: shownId, keptId: null, reason });
    return 'merged';
  });

/** Both records stand by themselves again; a prescription that had ended stays ended. */
export const undoMerge = (
  access: Access,
  shownId: string,
  otherId: string,
  reason: string,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const { merges } = await mergesOf(access, shownId);
    if (!merges.some((merge) => merge.patientId === otherId && merge.intoId === shownId)) return false;
    await append(tx, access, otherId, { act: 'undone', intoId: shownId, keptId: null, reason });
    return true;
  });

/** Ends what is in force or waits on every record of the person but one; signing goes on there alone. */
export const choosePlan = (
  access: Access,
  shownId: string,
  keptId: string,
  reason: string,
): Promise<{ readonly ended: number } | null> =>
  access.store.write(async (tx) => {
    const { merges } = await mergesOf(access, shownId);
    const ids = [shownId, ...(await mergedWith(access, shownId))];
    if (merges.length === 0 || !ids.includes(keptId)) return null;
    for (const merge of merges)
      await append(tx, access, merge.patientId, {
        act: 'plan-chosen',
        intoId: merge.intoId,
        keptId,
        reason,
      });
    let ended = 0;
    for (const id of ids.filter((one) => one !== keptId)) {
      const versions = await prescriptionsOf(access, id);
      for (const row of [...inForce(versions), ...unsigned(versions)])
        if (await endPrescription(access, id, row.id, 'Records merged: the plan of the other one stays.'))
          ended += 1;
    }
    return { ended };
  });

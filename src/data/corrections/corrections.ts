/** Marking an entry as entered in error, and having seen the plan after it. Both are rows of their own. */
import { randomUUID } from 'node:crypto';
import { desc, eq } from 'drizzle-orm';
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import type { CorrectedMeasurement } from '#core/corrections/doses-before.ts';
import type { Access } from '../access.ts';
import { measurementsOnRecord } from '../assessment/measurements.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { correction, planSeen } from '../schema/schema.ts';
import { correctionIndexFor } from './correction-index.ts';
import type { EnteredRow } from './entered.ts';

const correctionRows = patientQuery((db) =>
  db
    .select()
    .from(correction)
    .leftJoin(planSeen, eq(planSeen.correctionId, correction.id))
    .where(ofPatient(correction))
    .orderBy(desc(correction.correctedAt), desc(correction.id)),
);

/** Newest first, each with who has seen the plan after it; null = nobody yet, or nobody had to. */
export const correctionsOf = async (access: Access, patientId: string) =>
  (await correctionRows(access, patientId)).map(({ correction: row, plan_seen: seen }) => {
    const { clinicId: _, patientId: __, correctedBy: ___, ...rest } = row;
    return { ...rest, seen: seen && { at: seen.seenAt, by: seen.seenName } };
  });

/** Measurements that were corrected, with the time in which they stood. */
export const correctedMeasurements = async (
  access: Access,
  patientId: string,
): Promise<readonly CorrectedMeasurement[]> => {
  const marked = (await correctionsOf(access, patientId)).filter(({ subject }) => subject === 'measurement');
  if (marked.length === 0) return [];
  const known = new Map((await measurementsOnRecord(access, patientId)).map((row) => [row.id, row]));
  return marked.flatMap(({ subjectId, enteredAt, correctedAt }) => {
    const measurement = known.get(subjectId);
    return measurement ? [{ measurement, enteredAt, correctedAt }] : [];
  });
};

interface NewCorrection {
  readonly subject: CorrectionSubject;
  readonly row: EnteredRow;
  readonly reason: string;
  readonly replacedById: string | null;
  readonly waits: boolean;
}

/** Marks a row; the caller has looked that nobody has marked it before. */
export const markEnteredInError = (
  access: Access,
  patientId: string,
  { subject, row, reason, replacedById, waits }: NewCorrection,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const index = await correctionIndexFor(access, patientId);
    await tx.insert(correction).values({
      id,
      clinicId: access.clinicId,
      patientId,
      subject,
      subjectId: row.id,
      joint: row.joint,
      enteredAt: row.recordedAt,
      firstSaidAt: index.saidAt(row),
      reason,
      replacedById,
      waits,
      correctedAt: access.now,
      correctedBy: access.actorId,
      correctedName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'correction', {
      subjectId: row.id,
      patientId,
      detail: { of: subject, replaced: replacedById !== null, waits },
    });
    return id;
  });

/** From now on only the entries as corrected count; the caller has looked that it waits. */
export const recordPlanSeen = (access: Access, patientId: string, correctionId: string): Promise<void> =>
  access.store.write(async (tx) => {
    await tx.insert(planSeen).values({
      correctionId,
      clinicId: access.clinicId,
      patientId,
      seenAt: access.now,
      seenBy: access.actorId,
      seenName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'plan-seen', { subjectId: correctionId, patientId });
  });

/** Writing prescriptions: a new version, its signature, its end. Each is a row of its own. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, max } from 'drizzle-orm';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { type SigningStopped, signingStopped } from '../patients/merges.ts';
import { prescription, prescriptionEnd, signature } from '../schema/schema.ts';

export interface NewVersion {
  /** Left out for a new prescribed exercise. */
  readonly itemId?: string;
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly working: readonly string[];
  readonly origin: PrescriptionVersion['origin'];
  readonly decisionId?: string | null;
}

export const addVersion = (access: Access, patientId: string, row: NewVersion): Promise<string> =>
  access.store.write(async (tx) => {
    const itemId = row.itemId ?? randomUUID();
    const [last] = await tx
      .select({ version: max(prescription.version) })
      .from(prescription)
      .where(and(eq(prescription.clinicId, access.clinicId), eq(prescription.itemId, itemId)));
    const id = randomUUID();
    const version = (last?.version ?? 0) + 1;
    await tx.insert(prescription).values({
      id,
      ...recordedFor(access, patientId),
      itemId,
      version,
      method: row.dose.method,
      exerciseId: row.dose.exerciseId,
      dose: row.dose,
      badDay: row.badDay,
      joints: row.joints,
      cautions: row.cautions,
      cautionWording,
      working: row.working,
      origin: row.origin,
      decisionId: row.decisionId ?? null,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'prescription', {
      subjectId: id,
      patientId,
      detail: { itemId, version, origin: row.origin },
    });
    return id;
  });

/** A reduction inside the signed dose carries the signature of the version it reduces. */
export const carrySignature = (
  access: Access,
  patientId: string,
  prescriptionId: string,
  signedName: string,
): Promise<void> =>
  access.store.write(async (tx) => {
    await tx.insert(signature).values({
      prescriptionId,
      clinicId: access.clinicId,
      patientId,
      signedAt: access.now,
      signedBy: access.actorId,
      signedName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'signature', {
      subjectId: prescriptionId,
      patientId,
      detail: { carried: true },
    });
  });

/** Why an exercise ended that a newly signed one takes the place of. */
export const replacedReason = 'Replaced by a newly signed prescription.';

export type Signed = 'signed' | 'not-found' | 'already-signed' | 'overtaken' | SigningStopped;

export const signPrescription = (
  access: Access,
  patientId: string,
  prescriptionId: string,
): Promise<Signed> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select()
      .from(prescription)
      .where(
        and(
          eq(prescription.clinicId, access.clinicId),
          eq(prescription.patientId, patientId),
          eq(prescription.id, prescriptionId),
        ),
      );
    if (!row) return 'not-found';
    const [newest] = await tx
      .select({ id: prescription.id })
      .from(prescription)
      .where(eq(prescription.itemId, row.itemId))
      .orderBy(desc(prescription.version))
      .limit(1);
    if (newest?.id !== prescriptionId) return 'overtaken';
    const [signed] = await tx.select().from(signature).where(eq(signature.prescriptionId, prescriptionId));
    if (signed) return 'already-signed';
    const stopped = await signingStopped(access, patientId);
    if (stopped) return stopped;
    await tx.insert(signature).values({
      prescriptionId,
      clinicId: access.clinicId,
      patientId,
      signedAt: access.now,
      signedBy: access.actorId,
      signedName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'signature', { subjectId: prescriptionId, patientId });
    return 'signed';
  });

export const endPrescription = (
  access: Access,
  patientId: string,
  prescriptionId: string,
  reason: string,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select({ id: prescription.id })
      .from(prescription)
      .where(
        and(
          eq(prescription.clinicId, access.clinicId),
          eq(prescription.patientId, patientId),
          eq(prescription.id, prescriptionId),
        ),
      );
    const [ended] = await tx
      .select()
      .from(prescriptionEnd)
      .where(eq(prescriptionEnd.prescriptionId, prescriptionId));
    if (!row || ended) return false;
    await tx.insert(prescriptionEnd).values({
      prescriptionId,
      clinicId: access.clinicId,
      patientId,
      endedAt: access.now,
      endedBy: access.actorId,
      reason,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'prescription-end', { subjectId: prescriptionId, patientId });
    return true;
  });

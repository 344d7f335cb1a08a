/** Prescriptions as append-only versions; signing and ending are rows of their own. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, max } from 'drizzle-orm';
import type { Caution } from '#core/caution.ts';
import type { Joint } from '#core/joints.ts';
import type { Dose } from '#core/model/dose.ts';
import type { PrescriptionVersion } from '#core/model/record.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { touchMatters } from './matters.ts';
import { prescription, prescriptionEnd, signature } from './schema/schema.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

export interface Prescription {
  readonly id: string;
  readonly lineId: string;
  readonly version: number;
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly working: readonly string[];
  readonly origin: PrescriptionVersion['origin'];
  readonly decisionId: string | null;
  readonly recordedAt: number;
  readonly signedAt: number | null;
  readonly signedName: string | null;
  readonly endedAt: number | null;
  readonly endReason: string | null;
}

export interface NewVersion {
  /** Left out for a new prescribed exercise. */
  readonly lineId?: string;
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly joints: readonly Joint[];
  readonly cautions: readonly Caution[];
  readonly working: readonly string[];
  readonly origin: PrescriptionVersion['origin'];
  readonly decisionId?: string | null;
}

const versionRows = patientQuery((db) =>
  db
    .select()
    .from(prescription)
    .leftJoin(signature, eq(signature.prescriptionId, prescription.id))
    .leftJoin(prescriptionEnd, eq(prescriptionEnd.prescriptionId, prescription.id))
    .where(ofPatient(prescription))
    .orderBy(asc(prescription.recordedAt), asc(prescription.version)),
);

/** Every version of a patient, oldest first, signed or not. */
export const prescriptionsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly Prescription[]> => {
  const rows = await versionRows(access, patientId);
  return rows.map(({ prescription: row, signature: signed, prescription_end: ended }) => ({
    id: row.id,
    lineId: row.lineId,
    version: row.version,
    dose: row.dose,
    badDay: row.badDay,
    joints: row.joints as readonly Joint[],
    cautions: row.cautions,
    working: row.working,
    origin: row.origin,
    decisionId: row.decisionId,
    recordedAt: row.recordedAt,
    signedAt: signed?.signedAt ?? null,
    signedName: signed?.signedName ?? null,
    endedAt: ended?.endedAt ?? null,
    endReason: ended?.reason ?? null,
  }));
};

/** The version of each line that the patient follows now: newest signed, not ended. */
export const inForce = (versions: readonly Prescription[]): readonly Prescription[] => {
  const newest = new Map<string, Prescription>();
  for (const version of versions) {
    const known = newest.get(version.lineId);
    if (version.signedAt !== null && (!known || version.version > known.version))
      newest.set(version.lineId, version);
  }
  return [...newest.values()].filter((version) => version.endedAt === null);
};

/** Versions nobody has signed that are newer than what is in force. */
export const unsigned = (versions: readonly Prescription[]): readonly Prescription[] =>
  versions.filter(
    (version) =>
      version.signedAt === null &&
      version.endedAt === null &&
      !versions.some((other) => other.lineId === version.lineId && other.version > version.version),
  );

export const addVersion = (access: Access, patientId: string, row: NewVersion): Promise<string> =>
  access.store.write(async (tx) => {
    const lineId = row.lineId ?? randomUUID();
    const [last] = await tx
      .select({ version: max(prescription.version) })
      .from(prescription)
      .where(and(eq(prescription.clinicId, access.clinicId), eq(prescription.lineId, lineId)));
    const id = randomUUID();
    const version = (last?.version ?? 0) + 1;
    await tx.insert(prescription).values({
      id,
      clinicId: access.clinicId,
      patientId,
      lineId,
      version,
      method: row.dose.method,
      exerciseId: row.dose.exerciseId,
      dose: row.dose,
      badDay: row.badDay,
      joints: row.joints,
      cautions: row.cautions,
      working: row.working,
      origin: row.origin,
      decisionId: row.decisionId ?? null,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'prescription',
      subjectId: id,
      patientId,
      detail: { lineId, version, origin: row.origin },
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
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'signature',
      subjectId: prescriptionId,
      patientId,
      detail: { carried: true },
    });
  });

export type Signed = 'signed' | 'not-found' | 'already-signed' | 'overtaken';

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
      .where(eq(prescription.lineId, row.lineId))
      .orderBy(desc(prescription.version))
      .limit(1);
    if (newest?.id !== prescriptionId) return 'overtaken';
    const [signed] = await tx.select().from(signature).where(eq(signature.prescriptionId, prescriptionId));
    if (signed) return 'already-signed';
    await tx.insert(signature).values({
      prescriptionId,
      clinicId: access.clinicId,
      patientId,
      signedAt: access.now,
      signedBy: access.actorId,
      signedName: access.actorName,
    });
    touchMatters(access, patientId);
    await sealed(tx, access, { act: 'write', subject: 'signature', subjectId: prescriptionId, patientId });
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
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'prescription-end',
      subjectId: prescriptionId,
      patientId,
    });
    return true;
  });

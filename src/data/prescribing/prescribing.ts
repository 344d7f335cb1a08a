/** Writing prescriptions: a new version, its signature, its end. Each is a row of its own. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, max, sql } from 'drizzle-orm';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { insertRows } from '../database/insert-rows.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { type SigningStopped, signingStopped } from '../patients/merges.ts';
import { prescription, prescriptionEnd, signature } from '../schema/schema.ts';
import { prescriptionsOf } from './prescriptions.ts';

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

const lastVersions = prepared((db) =>
  db
    .select({ itemId: prescription.itemId, version: max(prescription.version) })
    .from(prescription)
    .where(
      and(
        ofClinic(prescription),
        sql`${prescription.itemId} IN (SELECT value FROM json_each(${sql.placeholder('ids')}))`,
      ),
    )
    .groupBy(prescription.itemId),
);

/** Versions of different exercises; their ids in the same order. */
export const addVersions = (
  access: Access,
  patientId: string,
  added: readonly NewVersion[],
): Promise<readonly string[]> =>
  access.store.write(async (tx) => {
    if (added.length === 0) return [];
    const items = added.map((row) => row.itemId ?? randomUUID());
    const { clinicId } = access;
    const known = await lastVersions(tx, { clinicId, ids: JSON.stringify(items) });
    const last = new Map(known.map(({ itemId, version }) => [itemId, version]));
    const rows = added.map((row, place) => ({
      ...row,
      id: randomUUID(),
      ...recordedFor(access, patientId),
      itemId: items[place]!,
      version: (last.get(items[place]!) ?? 0) + 1,
      method: row.dose.method,
      exerciseId: row.dose.exerciseId,
      cautionWording,
      decisionId: row.decisionId ?? null,
    }));
    insertRows(tx, prescription, rows);
    changed(access, patientId);
    for (const { id, itemId, version, origin } of rows)
      await auditWrite(tx, access, 'prescription', {
        subjectId: id,
        patientId,
        detail: { itemId, version, origin },
      });
    return rows.map(({ id }) => id);
  });

export const addVersion = async (access: Access, patientId: string, row: NewVersion): Promise<string> =>
  (await addVersions(access, patientId, [row]))[0]!;

/** A reduction inside the signed dose carries the signature of the version it reduces. */
export const carrySignatures = (
  access: Access,
  patientId: string,
  carried: readonly { readonly prescriptionId: string; readonly signedName: string }[],
): Promise<void> =>
  access.store.write(async (tx) => {
    if (carried.length === 0) return;
    const own = { clinicId: access.clinicId, patientId, signedAt: access.now, signedBy: access.actorId };
    insertRows(
      tx,
      signature,
      carried.map((row) => ({ ...own, ...row })),
    );
    changed(access, patientId);
    for (const { prescriptionId: subjectId } of carried)
      await auditWrite(tx, access, 'signature', { subjectId, patientId, detail: { carried: true } });
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

/** Ends those of them that are this patient's and have not ended; how many these were. */
export const endPrescriptions = (
  access: Access,
  patientId: string,
  ids: readonly string[],
  reason: string,
): Promise<number> =>
  access.store.write(async (tx) => {
    if (ids.length === 0) return 0;
    const known = await prescriptionsOf(access, patientId);
    const open = known.filter(({ id, endedAt }) => endedAt === null && ids.includes(id));
    const { clinicId, now: endedAt, actorId: endedBy } = access;
    insertRows(
      tx,
      prescriptionEnd,
      open.map(({ id }) => ({ prescriptionId: id, clinicId, patientId, endedAt, endedBy, reason })),
    );
    if (open.length > 0) changed(access, patientId);
    for (const { id: subjectId } of open)
      await auditWrite(tx, access, 'prescription-end', { subjectId, patientId });
    return open.length;
  });

export const endPrescription = async (
  access: Access,
  patientId: string,
  prescriptionId: string,
  reason: string,
): Promise<boolean> => (await endPrescriptions(access, patientId, [prescriptionId], reason)) === 1;

/** What the worklist needs to know of prescriptions: since when one waits, and which pressures are in use. */
import { asc, eq, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { ofSignature } from '../prescribing/signature-withdrawal.ts';
import { prescription, prescriptionEnd, signature, signatureWithdrawal } from '../schema/schema.ts';

/** Every line's newest version with its signature and end. */
export const prescriptionRows = (access: Access) =>
  access.store.read
    .select({
      patientId: prescription.patientId,
      itemId: prescription.itemId,
      version: prescription.version,
      recordedAt: prescription.recordedAt,
      signedAt: signature.signedAt,
      endedAt: prescriptionEnd.endedAt,
      withdrawnAt: signatureWithdrawal.withdrawnAt,
      measuredOn: sql<string | null>`json_extract(${prescription.dose}, '$.cuff.measuredOn')`,
    })
    .from(prescription)
    .leftJoin(signature, ofSignature())
    .leftJoin(signatureWithdrawal, eq(signatureWithdrawal.prescriptionId, prescription.id))
    .leftJoin(prescriptionEnd, eq(prescriptionEnd.prescriptionId, prescription.id))
    .where(eq(prescription.clinicId, access.clinicId))
    .orderBy(asc(prescription.version));

type PrescriptionRow = Awaited<ReturnType<typeof prescriptionRows>>[number];

/** A dose whose signature was taken back waits as a new version, and since the first of them. */
const waitsSince = (row: PrescriptionRow, rows: readonly PrescriptionRow[]): number => {
  const before = rows.find(({ itemId, version }) => itemId === row.itemId && version === row.version - 1);
  return before && before.withdrawnAt !== null ? waitsSince(before, rows) : row.recordedAt;
};

export const prescriptionState = (rows: readonly PrescriptionRow[], zone: string) => {
  const newest = new Map(rows.map((row) => [row.itemId, row]));
  const waiting = [...newest.values()].filter((row) => row.signedAt === null && row.endedAt === null);
  const newestSigned = new Map(rows.filter((row) => row.signedAt !== null).map((row) => [row.itemId, row]));
  const inForce = [...newestSigned.values()].filter((row) => row.endedAt === null);
  const firstSigned = Math.min(...inForce.map((row) => row.signedAt ?? Number.POSITIVE_INFINITY));
  const measured = inForce.flatMap((row) => (row.measuredOn ? [row.measuredOn] : [])).sort();
  return {
    unsignedSince: waiting.length > 0 ? Math.min(...waiting.map((row) => waitsSince(row, rows))) : null,
    startedOn: inForce.length > 0 ? dayAt(firstSigned, zone) : null,
    pressureMeasuredOn: measured[0] ?? null,
  };
};

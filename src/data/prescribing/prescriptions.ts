/** Prescriptions as append-only versions, each with its signature and its end. */
import { and, asc, eq, type SQL, sql } from 'drizzle-orm';
import type { Joint } from '#core/exercises/joints.ts';
import { isSameLine } from '#core/prescribing/beside.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import {
  doseHandedOver,
  prescription,
  prescriptionEnd,
  signature,
  signatureWithdrawal,
} from '../schema/schema.ts';
import { ofSignature } from './signature-withdrawal.ts';

export interface Prescription {
  readonly id: string;
  readonly itemId: string;
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
  /** Its signature was taken back, and the next version is the same dose waiting again; null = it was not. */
  readonly withdrawnAt: number | null;
  /** When it was first sent to the patient's phone; null = not yet. */
  readonly handedAt: number | null;
}

const versionsWhere = (db: Db, where: SQL) =>
  db
    .select({
      id: prescription.id,
      itemId: prescription.itemId,
      version: prescription.version,
      dose: prescription.dose,
      badDay: prescription.badDay,
      joints: prescription.joints,
      cautions: prescription.cautions,
      working: prescription.working,
      origin: prescription.origin,
      decisionId: prescription.decisionId,
      recordedAt: prescription.recordedAt,
      signedAt: signature.signedAt,
      signedName: signature.signedName,
      endedAt: prescriptionEnd.endedAt,
      endReason: prescriptionEnd.reason,
      withdrawnAt: signatureWithdrawal.withdrawnAt,
      handedAt: doseHandedOver.handedAt,
      patientId: prescription.patientId,
    })
    .from(prescription)
    .leftJoin(signature, ofSignature())
    .leftJoin(signatureWithdrawal, eq(signatureWithdrawal.prescriptionId, prescription.id))
    .leftJoin(doseHandedOver, eq(doseHandedOver.prescriptionId, prescription.id))
    .leftJoin(prescriptionEnd, eq(prescriptionEnd.prescriptionId, prescription.id))
    .where(where)
    .orderBy(asc(prescription.recordedAt), asc(prescription.version));

type VersionRow = Awaited<ReturnType<typeof versionsWhere>>[number];

const prescriptionIn = ({ patientId: _, ...row }: VersionRow): Prescription => ({
  ...row,
  joints: row.joints as readonly Joint[],
});

export const versionRows = patientQuery((db) => versionsWhere(db, ofPatient(prescription)));

const versionRowsOfEach = prepared((db) =>
  versionsWhere(
    db,
    and(
      ofClinic(prescription),
      sql`${prescription.patientId} IN (SELECT value FROM json_each(${sql.placeholder('ids')}))`,
    )!,
  ),
);

/** Every version of each of these patients, in one query. */
export const prescriptionsOfEach = async (
  { store, clinicId }: Access,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly Prescription[]>> => {
  const rows = await versionRowsOfEach(store.read, { clinicId, ids: JSON.stringify(ids) });
  const found = new Map<string, Prescription[]>();
  for (const row of rows) {
    const known = found.get(row.patientId);
    if (known) known.push(prescriptionIn(row));
    else found.set(row.patientId, [prescriptionIn(row)]);
  }
  return found;
};

/** Every version of a patient, oldest first, signed or not. */
export const prescriptionsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly Prescription[]> => {
  const rows = await versionRows(access, patientId);
  return rows.map(prescriptionIn);
};

/** The version of each line that the patient follows now: newest signed, not ended. */
export const inForce = (versions: readonly Prescription[]): readonly Prescription[] => {
  const newest = new Map<string, Prescription>();
  for (const version of versions) {
    const known = newest.get(version.itemId);
    if (version.signedAt !== null && (!known || version.version > known.version))
      newest.set(version.itemId, version);
  }
  return [...newest.values()].filter((version) => version.endedAt === null);
};

/** Another prescribed exercise in force that is the same exercise, side and method; null where there is none. */
export const sameInForce = (
  versions: readonly Prescription[],
  { itemId, dose }: Pick<Prescription, 'itemId' | 'dose'>,
): Prescription | null =>
  inForce(versions).find((other) => other.itemId !== itemId && isSameLine(other.dose, dose)) ?? null;

/** Versions nobody has signed that are newer than what is in force. */
export const unsigned = (versions: readonly Prescription[]): readonly Prescription[] =>
  versions.filter(
    (version) =>
      version.signedAt === null &&
      version.endedAt === null &&
      !versions.some((other) => other.itemId === version.itemId && other.version > version.version),
  );

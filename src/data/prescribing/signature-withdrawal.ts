/** Which signature stands: one that was withdrawn stays on record and signs nothing. */
import { and, eq, type SQL, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { prescription, signature, signatureWithdrawal } from '../schema/schema.ts';

export const ofSignature = (): SQL =>
  and(
    eq(signature.prescriptionId, prescription.id),
    sql`NOT EXISTS (SELECT 1 FROM ${signatureWithdrawal} WHERE ${signatureWithdrawal.prescriptionId} = ${prescription.id})`,
  )!;

export const withdrawnRows = patientQuery((db) =>
  db
    .select({
      prescriptionId: signature.prescriptionId,
      signedAt: signature.signedAt,
      withdrawnAt: signatureWithdrawal.withdrawnAt,
    })
    .from(signatureWithdrawal)
    .innerJoin(signature, eq(signature.prescriptionId, signatureWithdrawal.prescriptionId))
    .where(ofPatient(signatureWithdrawal)),
);

const none: ReadonlyMap<string, number> = new Map();

/** When those versions were signed whose signature still stood at the instant a record is read at. */
export const signedUntilWithdrawn = async (
  access: Access,
  patientId: string,
): Promise<ReadonlyMap<string, number>> => {
  const { knownAt } = access;
  if (knownAt === undefined) return none;
  const rows = await withdrawnRows(access, patientId);
  return new Map(
    rows
      .filter(({ withdrawnAt }) => withdrawnAt > knownAt)
      .map(({ prescriptionId, signedAt }) => [prescriptionId, signedAt]),
  );
};

/** Which signature stands: one that was withdrawn stays on record and signs nothing. */
import { and, eq, type SQL, sql } from 'drizzle-orm';
import { prescription, signature, signatureWithdrawal } from '../schema/schema.ts';

export const ofSignature = (): SQL =>
  and(
    eq(signature.prescriptionId, prescription.id),
    sql`NOT EXISTS (SELECT 1 FROM ${signatureWithdrawal} WHERE ${signatureWithdrawal.prescriptionId} = ${prescription.id})`,
  )!;

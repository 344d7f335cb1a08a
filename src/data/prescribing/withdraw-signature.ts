/**
 * Taking back a signature before it could act. The dose waits again as a version of its own, since a version is
 * signed once; what was in force before stands again. Once the phone was sent the dose, or a session was done at
 * it, the way is a new dose.
 */
import { and, eq, inArray, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { doseHandedOver, setLog, signature, signatureWithdrawal } from '../schema/schema.ts';
import { addVersion, replacedReason } from './prescribing.ts';
import { type Prescription, prescriptionsOf } from './prescriptions.ts';

export type Withdrawal =
  | 'withdrawn'
  | 'not-signed'
  | 'signed-by-another'
  | 'overtaken'
  | 'replaced-another'
  | 'handed-over'
  | 'session-done';

const ofVersion = (table: typeof signature | typeof setLog) =>
  and(ofPatient(table), eq(table.prescriptionId, sql.placeholder('prescriptionId')));

const signers = patientQuery((db) =>
  db.select({ signedBy: signature.signedBy }).from(signature).where(ofVersion(signature)),
);

const setsDone = patientQuery((db) =>
  db.select({ id: setLog.id }).from(setLog).where(ofVersion(setLog)).limit(1),
);

const whyNot = async (
  access: Access,
  patientId: string,
  row: Prescription,
  versions: readonly Prescription[],
): Promise<Withdrawal> => {
  const prescriptionId = row.id;
  if (row.signedAt === null) return 'not-signed';
  const [signer] = await signers(access, patientId, { prescriptionId });
  if (signer?.signedBy !== access.actorId) return 'signed-by-another';
  const isNewest = !versions.some((one) => one.itemId === row.itemId && one.version > row.version);
  if (!isNewest || row.endedAt !== null) return 'overtaken';
  if (versions.some((one) => one.endedAt === row.signedAt && one.endReason === replacedReason))
    return 'replaced-another';
  if (row.handedAt !== null) return 'handed-over';
  return (await setsDone(access, patientId, { prescriptionId })).length > 0 ? 'session-done' : 'withdrawn';
};

export const withdrawSignature = (
  access: Access,
  patientId: string,
  prescriptionId: string,
): Promise<Withdrawal | 'not-found'> =>
  access.store.write(async (tx) => {
    const versions = await prescriptionsOf(access, patientId);
    const row = versions.find(({ id }) => id === prescriptionId);
    if (!row) return 'not-found';
    const answer = await whyNot(access, patientId, row, versions);
    if (answer !== 'withdrawn') return answer;
    await tx.insert(signatureWithdrawal).values({
      prescriptionId,
      clinicId: access.clinicId,
      patientId,
      withdrawnAt: access.now,
      withdrawnBy: access.actorId,
      withdrawnName: access.actorName,
    });
    await addVersion(access, patientId, row);
    changed(access, patientId);
    await auditWrite(tx, access, 'signature-withdrawal', { subjectId: prescriptionId, patientId });
    return answer;
  });

/** Notes which doses a phone is sent for the first time; a signature under them is not withdrawn any more. */
export const noteHandedOver = async (
  access: Access,
  patientId: string,
  sent: readonly Pick<Prescription, 'id' | 'handedAt'>[],
): Promise<void> => {
  const fresh = sent.filter(({ handedAt }) => handedAt === null);
  if (fresh.length === 0) return;
  const { clinicId, now: handedAt } = access;
  await access.store.write(async (tx) => {
    // Two phones may ask in the same moment; the first note counts.
    const ids = fresh.map(({ id }) => id);
    const noted = await tx
      .select({ id: doseHandedOver.prescriptionId })
      .from(doseHandedOver)
      .where(inArray(doseHandedOver.prescriptionId, ids));
    const left = ids.filter((id) => !noted.some((row) => row.id === id));
    if (left.length === 0) return;
    await tx
      .insert(doseHandedOver)
      .values(left.map((prescriptionId) => ({ prescriptionId, clinicId, patientId, handedAt })));
    await auditWrite(tx, access, 'dose-handed-over', { patientId, detail: { doses: left.length } });
  });
};

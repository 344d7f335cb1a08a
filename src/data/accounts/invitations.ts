/**
 * Invitations a clinic hands to a patient. The code is shown once and only its seal is kept, made
 * with a key outside the file: a copy of the file gives nobody a code.
 */
import { createHmac, randomUUID } from 'node:crypto';
import { and, desc, eq, gt, isNull } from 'drizzle-orm';
import { recordKeepingSettings } from '#core/record/settings.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { authUser, invitation } from '../schema/schema.ts';
import { randomCode } from './passphrase.ts';

/** Typed by sore fingers: small letters, spaces and the letters that stand for a digit are taken. */
const readCode = (typed: string): string =>
  typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');

export const codeSeal = (key: Uint8Array, typed: string): string =>
  createHmac('sha256', key)
    .update(`invitation ${readCode(typed)}`)
    .digest('hex');

export interface Invitation {
  readonly id: string;
  readonly madeAt: number;
  readonly expiresAt: number;
  readonly state: 'open' | 'used' | 'withdrawn' | 'run-out';
}

/** 50 bits, used once, for some days. Earlier open invitations of the patient are withdrawn. */
export const invite = async (
  access: Access,
  patientId: string,
): Promise<{ readonly code: string; readonly expiresAt: number }> => {
  const days = await settingValue(access, recordKeepingSettings, 'invitation-days');
  const code = randomCode(2);
  const madeAt = Date.now();
  const expiresAt = madeAt + days * 86_400_000;
  await access.store.write(async (tx) => {
    const own = and(eq(invitation.clinicId, access.clinicId), eq(invitation.patientId, patientId));
    await tx
      .update(invitation)
      .set({ withdrawnAt: madeAt })
      .where(
        and(own, isNull(invitation.usedAt), isNull(invitation.withdrawnAt), gt(invitation.expiresAt, madeAt)),
      );
    const id = randomUUID();
    await tx.insert(invitation).values({
      id,
      clinicId: access.clinicId,
      patientId,
      codeDigest: codeSeal(access.auditKey, code),
      madeAt,
      madeBy: access.actorId,
      expiresAt,
    });
    await auditWrite(tx, access, 'invitation', { subjectId: id, patientId, detail: { days } });
  });
  return { code, expiresAt };
};

export const invitationRows = patientQuery((db) =>
  db.select().from(invitation).where(ofPatient(invitation)).orderBy(desc(invitation.madeAt)),
);

export const invitationsOf = async (access: Access, patientId: string): Promise<readonly Invitation[]> => {
  const rows = await invitationRows(access, patientId);
  return rows.map((row) => ({
    id: row.id,
    madeAt: row.madeAt,
    expiresAt: row.expiresAt,
    state: row.usedAt
      ? 'used'
      : row.withdrawnAt
        ? 'withdrawn'
        : row.expiresAt <= Date.now()
          ? 'run-out'
          : 'open',
  }));
};

export const withdrawInvitation = (access: Access, patientId: string, id: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const withdrawn = await tx
      .update(invitation)
      .set({ withdrawnAt: Date.now() })
      .where(
        and(
          eq(invitation.clinicId, access.clinicId),
          eq(invitation.patientId, patientId),
          eq(invitation.id, id),
          isNull(invitation.usedAt),
          isNull(invitation.withdrawnAt),
          gt(invitation.expiresAt, Date.now()),
        ),
      )
      .returning({ id: invitation.id });
    if (withdrawn.length === 0) return false;
    await auditWrite(tx, access, 'invitation-withdrawn', { subjectId: id, patientId });
    return true;
  });

export const ownSignIn = patientQuery((db) =>
  db.select({ id: authUser.id }).from(authUser).where(ofPatient(authUser)).limit(1),
);

/** Whether an invitation is open, or the patient has a sign-in of their own already. */
export const isLetIn = async (access: Access, patientId: string): Promise<boolean> => {
  if ((await invitationsOf(access, patientId)).some(({ state }) => state === 'open')) return true;
  return (await ownSignIn(access, patientId)).length > 0;
};

/**
 * A patient's phone: enrolled once by an invitation, then opened by a PIN that works on it alone.
 * The phone holds a random secret; the PIN is hashed together with it, so that a copy of the file
 * does not let anybody try PINs.
 */
import { randomUUID, timingSafeEqual } from 'node:crypto';
import { and, desc, eq, gt, isNull } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { appendAudit, auditWrite } from '../audit/audit.ts';
import type { Db } from '../database/connection.ts';
import type { Store } from '../database/store.ts';
import { clinicIds, clinicOf } from '../patients/people.ts';
import { authSession, authUser, device, invitation, patientIdentity } from '../schema/schema.ts';
import { codeSeal } from './invitations.ts';
import { makeSecret, secretDigest } from './secret.ts';

/** Wrong tries of a PIN after which only a new invitation helps. */
export const pinAttempts = 5;

/** What phones need of the running product. */
export interface PhoneContext {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  /** Clinical instant, for the audit. */
  readonly now: number;
}

export interface EnrolledPhone {
  readonly deviceId: string;
  readonly secret: string;
}

/** The patient's own sign-in; made when the first phone is enrolled. */
const ownSignIn = async (tx: Db, clinicId: string, patientId: string) => {
  const [known] = await tx
    .select()
    .from(authUser)
    .where(and(eq(authUser.clinicId, clinicId), eq(authUser.patientId, patientId)));
  if (known) return known;
  const [person] = await tx
    .select()
    .from(patientIdentity)
    .where(and(eq(patientIdentity.clinicId, clinicId), eq(patientIdentity.patientId, patientId)));
  if (!person) return null;
  const id = randomUUID();
  const [made] = await tx
    .insert(authUser)
    .values({
      id,
      name: `${person.givenName} ${person.familyName}`,
      // Never written to: the library wants an address, and a phone has none.
      email: `${id}@phone.invalid`,
      clinicId,
      role: 'patient',
      patientId,
      createdAt: new Date(),
      updatedAt: new Date(),
    })
    .returning();
  return made ?? null;
};

/** Uses an invitation up and enrols the phone it was typed into; null when it is not open any more. */
export const enrolPhone = (context: PhoneContext, code: string): Promise<EnrolledPhone | null> =>
  context.store.write(async (tx) => {
    const now = Date.now();
    const [used] = await tx
      .update(invitation)
      .set({ usedAt: now })
      .where(
        and(
          eq(invitation.codeDigest, codeSeal(context.auditKey, code)),
          isNull(invitation.usedAt),
          isNull(invitation.withdrawnAt),
          gt(invitation.expiresAt, now),
        ),
      )
      .returning();
    const user = used ? await ownSignIn(tx, used.clinicId, used.patientId) : null;
    if (!used || !user || user.deactivatedAt) return null;
    const { clinicId, patientId } = used;
    const deviceId = randomUUID();
    const secret = makeSecret();
    await tx.insert(device).values({
      id: deviceId,
      clinicId,
      patientId,
      userId: user.id,
      secretDigest: secretDigest(secret),
      enrolledAt: now,
    });
    const acting = { ...context, clinicId, actorId: user.id };
    await appendAudit(tx, acting, {
      act: 'sign-in',
      subject: 'phone-enrolled',
      subjectId: deviceId,
      patientId,
    });
    return { deviceId, secret };
  });

/** The enrolled phone that holds this secret, or null when it is unknown or was ended. */
export const phoneOf = async (store: Store, cookie: string | null) => {
  const [deviceId = '', secret = ''] = (cookie ?? '').split('.');
  if (!deviceId || !secret) return null;
  const [row] = await store.read
    .select()
    .from(device)
    .where(and(eq(device.id, deviceId), isNull(device.endedAt)));
  if (!row) return null;
  const same = timingSafeEqual(Buffer.from(row.secretDigest), Buffer.from(secretDigest(secret)));
  return same ? { ...row, secret } : null;
};

/** The clinic of an enrolled phone, or the only one there is; null where several could be meant. */
export const clinicBeforeSignIn = async (store: Store, cookie: string | null) => {
  const phone = await phoneOf(store, cookie);
  const ids = phone ? [phone.clinicId] : await clinicIds(store);
  return ids.length === 1 ? clinicOf(store, ids[0]!) : null;
};

export type KnownPhone = NonNullable<Awaited<ReturnType<typeof phoneOf>>>;

export interface Phone {
  readonly id: string;
  readonly enrolledAt: number;
  /** When its PIN last opened it; null = no PIN was chosen yet. */
  readonly lastUsedAt: number | null;
  readonly state: 'in-use' | 'no-pin-yet' | 'too-many-tries';
  /** By whom; null = it was not ended. */
  readonly ended: { readonly at: number; readonly by: 'patient' | 'clinic' } | null;
}

const stateOf = ({ wrongAttempts, pinHash }: typeof device.$inferSelect): Phone['state'] => {
  if (wrongAttempts >= pinAttempts) return 'too-many-tries';
  return pinHash ? 'in-use' : 'no-pin-yet';
};

const ofPatient = (access: Access, patientId: string) =>
  and(eq(device.clinicId, access.clinicId), eq(device.patientId, patientId));

/** The newest first, ended ones too. */
export const phonesOf = async (access: Access, patientId: string): Promise<readonly Phone[]> => {
  const rows = await access.store.read
    .select()
    .from(device)
    .where(ofPatient(access, patientId))
    .orderBy(desc(device.enrolledAt));
  return rows.map((row) => ({
    id: row.id,
    enrolledAt: row.enrolledAt,
    lastUsedAt: row.lastUsedAt,
    state: stateOf(row),
    ended: row.endedAt && row.endedBy ? { at: row.endedAt, by: row.endedBy } : null,
  }));
};

/** A phone that was lost: its PIN opens nothing any more and its sign-ins end. */
export const endPhone = (
  access: Access,
  patientId: string,
  id: string,
  by: 'patient' | 'clinic',
): Promise<'ended' | 'ended-before' | 'unknown'> =>
  access.store.write(async (tx) => {
    const own = and(ofPatient(access, patientId), eq(device.id, id));
    const [phone] = await tx.select().from(device).where(own);
    if (!phone) return 'unknown';
    if (phone.endedAt) return 'ended-before';
    await tx.update(device).set({ endedAt: Date.now(), endedBy: by }).where(own);
    await tx.delete(authSession).where(eq(authSession.deviceId, id));
    await auditWrite(tx, access, 'phone-ended', { subjectId: id, patientId, detail: { by } });
    return 'ended';
  });

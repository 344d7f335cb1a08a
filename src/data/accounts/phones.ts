/**
 * A patient's phone: enrolled once by an invitation, then opened by a PIN that works on it alone.
 * The phone holds a random secret; the PIN is hashed together with it, so that a copy of the file
 * does not let anybody try PINs.
 */
import { createHash, randomBytes, randomUUID, timingSafeEqual } from 'node:crypto';
import { and, eq, gt, isNull, lt, sql } from 'drizzle-orm';
import { appendAudit } from '../audit/audit.ts';
import type { Db } from '../database/connection.ts';
import type { Store } from '../database/store.ts';
import { clinicIds, clinicOf } from '../patients/people.ts';
import { authUser, device, invitation, patientIdentity } from '../schema/schema.ts';
import { codeSeal } from './invitations.ts';
import { hashed, matches } from './passphrase.ts';

/** Wrong tries after which only a new invitation helps. */
const pinAttempts = 5;

/** Six digits, and not those tried first by whoever finds the phone. */
export const isGoodPin = (pin: string): boolean => {
  if (!/^\d{6}$/.test(pin) || new Set(pin).size < 3) return false;
  const steps = new Set([...pin].slice(1).map((digit, place) => Number(digit) - Number(pin[place])));
  return steps.size > 1;
};

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

const secretSealOf = (secret: string): string => createHash('sha256').update(secret).digest('hex');

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
    const secret = randomBytes(32).toString('base64url');
    await tx.insert(device).values({
      id: deviceId,
      clinicId,
      patientId,
      userId: user.id,
      secretDigest: secretSealOf(secret),
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
  const same = timingSafeEqual(Buffer.from(row.secretDigest), Buffer.from(secretSealOf(secret)));
  return same ? { ...row, secret } : null;
};

/** The clinic of an enrolled phone, or the only one there is; null where several could be meant. */
export const clinicBeforeSignIn = async (store: Store, cookie: string | null) => {
  const phone = await phoneOf(store, cookie);
  const ids = phone ? [phone.clinicId] : await clinicIds(store);
  return ids.length === 1 ? clinicOf(store, ids[0]!) : null;
};

export type KnownPhone = NonNullable<Awaited<ReturnType<typeof phoneOf>>>;

/** Chosen once, directly after enrolling; a forgotten PIN needs a new invitation. */
export const choosePin = async (context: PhoneContext, phone: KnownPhone, pin: string): Promise<boolean> => {
  const pinHash = await hashed(`${phone.secret}:${pin}`);
  const { clinicId, patientId, userId: actorId, id } = phone;
  return context.store.write(async (tx) => {
    const set = await tx
      .update(device)
      .set({ pinHash, lastUsedAt: Date.now() })
      .where(and(eq(device.id, id), isNull(device.pinHash)))
      .returning({ id: device.id });
    if (set.length === 0) return false;
    const acting = { ...context, clinicId, actorId };
    await appendAudit(tx, acting, { act: 'sign-in', subject: 'pin-chosen', subjectId: id, patientId });
    return true;
  });
};

export type PinAnswer =
  | { readonly is: 'right' }
  | { readonly is: 'wrong'; readonly left: number }
  | { readonly is: 'too-many-tries' };

/** A try is counted before it is checked, so that many at once are still five. */
export const tryPin = async (context: PhoneContext, phone: KnownPhone, pin: string): Promise<PinAnswer> => {
  const { clinicId, patientId, userId: actorId, id, pinHash } = phone;
  const acting = { ...context, clinicId, actorId };
  const [counted] = await context.store.write((tx) =>
    tx
      .update(device)
      .set({ wrongAttempts: sql`${device.wrongAttempts} + 1` })
      .where(and(eq(device.id, id), isNull(device.endedAt), lt(device.wrongAttempts, pinAttempts)))
      .returning({ wrongAttempts: device.wrongAttempts }),
  );
  if (!counted || !pinHash) return { is: 'too-many-tries' };
  const isRight = await matches(pinHash, `${phone.secret}:${pin}`);
  return context.store.write(async (tx): Promise<PinAnswer> => {
    const left = pinAttempts - counted.wrongAttempts;
    const subject = isRight ? 'phone-opened' : 'wrong-pin';
    const act = isRight ? 'sign-in' : 'refused';
    await appendAudit(tx, acting, {
      act,
      subject,
      subjectId: id,
      patientId,
      detail: isRight ? {} : { left },
    });
    if (!isRight) return left > 0 ? { is: 'wrong', left } : { is: 'too-many-tries' };
    await tx.update(device).set({ wrongAttempts: 0, lastUsedAt: Date.now() }).where(eq(device.id, id));
    return { is: 'right' };
  });
};

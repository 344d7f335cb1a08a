/** The PIN of an enrolled phone: chosen once, and tried a few times. */
import { and, eq, isNull, lt, sql } from 'drizzle-orm';
import { appendAudit } from '../audit/audit.ts';
import type { Db } from '../database/connection.ts';
import { device } from '../schema/schema.ts';
import { hashed, matches } from './passphrase.ts';
import { type KnownPhone, type PhoneContext, pinAttempts } from './phones.ts';

/** Six digits, and not those tried first by whoever finds the phone. */
export const isGoodPin = (pin: string): boolean => {
  if (!/^\d{6}$/.test(pin) || new Set(pin).size < 3) return false;
  const steps = new Set([...pin].slice(1).map((digit, place) => Number(digit) - Number(pin[place])));
  return steps.size > 1;
};

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
  | { readonly is: 'too-many-tries' }
  | { readonly is: 'ended' };

const isInUse = async (db: Db, id: string): Promise<boolean> =>
  (
    await db
      .select({ id: device.id })
      .from(device)
      .where(and(eq(device.id, id), isNull(device.endedAt)))
  ).length > 0;

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
    // Ended while its PIN was being checked: a right one opens nothing any more.
    if (!(await isInUse(tx, id))) return { is: 'ended' };
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

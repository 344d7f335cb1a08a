/** Passkeys of staff: the public halves, added, used and taken away. */
import { and, asc, eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { type Acting, appendAudit } from '../audit/audit.ts';
import type { Store } from '../database/store.ts';
import { passkey } from '../schema/schema.ts';

export interface NewPasskey {
  readonly id: string;
  readonly name: string;
  readonly publicKey: string;
  readonly counter: number;
}

export const passkeysOf = async (access: Pick<Access, 'store' | 'actorId'>) =>
  access.store.read
    .select({
      id: passkey.id,
      name: passkey.name,
      madeAt: passkey.madeAt,
      lastUsedAt: passkey.lastUsedAt,
    })
    .from(passkey)
    .where(eq(passkey.userId, access.actorId))
    .orderBy(asc(passkey.madeAt));

export const passkeyById = async (store: Store, id: string) => {
  const [row] = await store.read.select().from(passkey).where(eq(passkey.id, id));
  return row ?? null;
};

/** False when a device of this id is known already, whoever's it is. */
export const addPasskey = (access: Acting, row: NewPasskey, now: number): Promise<boolean> =>
  access.store.write(async (tx) => {
    const added = await tx
      .insert(passkey)
      .values({ ...row, clinicId: access.clinicId, userId: access.actorId, madeAt: now })
      .onConflictDoNothing()
      .returning({ id: passkey.id });
    if (added.length === 0) return false;
    await appendAudit(tx, access, { act: 'sign-in', subject: 'passkey-added', subjectId: access.actorId });
    return true;
  });

/** Only the own ones; false when it is gone already. */
export const removePasskey = (access: Acting, id: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const gone = await tx
      .delete(passkey)
      .where(and(eq(passkey.id, id), eq(passkey.userId, access.actorId)))
      .returning({ id: passkey.id });
    if (gone.length === 0) return false;
    await appendAudit(tx, access, { act: 'sign-in', subject: 'passkey-removed', subjectId: access.actorId });
    return true;
  });

/**
 * Notes a use. A device that counts must count upward: a number seen before means that two devices
 * hold the same key, and then neither is believed. The check and the note are one write.
 */
export const notePasskeyUse = (store: Store, id: string, counter: number, now: number): Promise<boolean> =>
  store.write(async (tx) => {
    const [row] = await tx.select({ counter: passkey.counter }).from(passkey).where(eq(passkey.id, id));
    if (!row) return false;
    const isCounting = row.counter > 0 || counter > 0;
    if (isCounting && counter <= row.counter) return false;
    await tx.update(passkey).set({ counter, lastUsedAt: now }).where(eq(passkey.id, id));
    return true;
  });

/** Passphrases and PINs: checked against the sign-in library's own hashes, changed, handed over. */
import { randomBytes } from 'node:crypto';
import { hashPassword, verifyPassword } from 'better-auth/crypto';
import { and, eq, ne } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import type { Store } from '../database/store.ts';
import { authAccount, authSession, authUser } from '../schema/schema.ts';

export const passphraseLength = { min: 12, max: 128 } as const;

/** Days for which a handed-over passphrase may be used. */
export const startingDays = 7;

/** Costs a fifth of a second of a core; never called inside a write. */
export const hashed = (text: string): Promise<string> => hashPassword(text);

export const matches = (hash: string, text: string): Promise<boolean> =>
  verifyPassword({ hash, password: text });

/** No letters or digits that are read one for the other; 32 of them, five bits each. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Random groups of five, such as 4KQ7M-X2D9T. */
export const randomCode = (groups: number): string =>
  Array.from({ length: groups }, () => [...randomBytes(5)].map((byte) => alphabet[byte & 31]).join('')).join(
    '-',
  );

/** 100 bits, to be typed once from a slip of paper. */
export const startingPassphrase = (): string => randomCode(4).toLowerCase();

const hashOf = async (store: Store, userId: string): Promise<string | null> => {
  const [row] = await store.read
    .select({ password: authAccount.password })
    .from(authAccount)
    .where(and(eq(authAccount.userId, userId), eq(authAccount.providerId, 'credential')));
  return row?.password ?? null;
};

export const passphraseMatches = async (store: Store, userId: string, text: string): Promise<boolean> => {
  const hash = await hashOf(store, userId);
  return hash !== null && matches(hash, text);
};

/** The new passphrase counts at once; every other session of the person ends. */
export const changePassphrase = async (access: Access, sessionId: string, text: string): Promise<void> => {
  const password = await hashed(text);
  await access.store.write(async (tx) => {
    const updatedAt = new Date();
    const userId = access.actorId;
    await tx
      .update(authAccount)
      .set({ password, updatedAt })
      .where(and(eq(authAccount.userId, userId), eq(authAccount.providerId, 'credential')));
    await tx.update(authUser).set({ startingUntil: null, updatedAt }).where(eq(authUser.id, userId));
    await tx.delete(authSession).where(and(eq(authSession.userId, userId), ne(authSession.id, sessionId)));
    await auditWrite(tx, access, 'own-passphrase', { subjectId: userId });
  });
};

/**
 * The sign-in library's way to the store. Its reads go to the reading connection and its writes
 * through the queue, so that a sign-in can never slip into somebody else's open transaction.
 */
import { drizzleAdapter } from 'better-auth/adapters/drizzle';
import type { BetterAuthOptions, DBAdapter } from 'better-auth/types';
import { eq } from 'drizzle-orm';
import type { Store } from '../database/store.ts';
import { authAccount, authSession, authTwoFactor, authUser, authVerification } from '../schema/schema.ts';

const tables = {
  user: authUser,
  session: authSession,
  account: authAccount,
  verification: authVerification,
  twoFactor: authTwoFactor,
};

/** What decides whether an account may open a session now; null when there is none. */
export const signInState = async (store: Store, userId: string) => {
  const [row] = await store.read
    .select({
      clinicId: authUser.clinicId,
      deactivatedAt: authUser.deactivatedAt,
      startingUntil: authUser.startingUntil,
    })
    .from(authUser)
    .where(eq(authUser.id, userId));
  return row ?? null;
};

/** Whose passphrase was right and whose code is waited for, by the challenge in the browser's cookie. */
export const challengedUser = async (store: Store, identifier: string): Promise<string | null> => {
  const [row] = await store.read
    .select({ userId: authVerification.value })
    .from(authVerification)
    .where(eq(authVerification.identifier, identifier));
  return row?.userId ?? null;
};

/** The account an address belongs to, for the audit of a sign-in. */
export const accountByEmail = async (store: Store, email: string) => {
  const [row] = await store.read
    .select({ id: authUser.id, clinicId: authUser.clinicId, name: authUser.name })
    .from(authUser)
    .where(eq(authUser.email, email.toLowerCase()));
  return row ?? null;
};

export const authDatabase =
  (store: Store) =>
  (options: BetterAuthOptions): DBAdapter<BetterAuthOptions> => {
    const config = { provider: 'sqlite', schema: tables, transaction: false } as const;
    const writing = drizzleAdapter(store.writer.db as never, config)(options);
    const reading = drizzleAdapter(store.reader.db as never, config)(options);
    /** One mutating call of the library, taken through the queue. */
    const queued =
      <A extends unknown[], R>(call: (...args: A) => Promise<R>) =>
      (...args: A): Promise<R> =>
        store.write(() => call(...args));
    return {
      ...writing,
      create: queued(writing.create.bind(writing)) as typeof writing.create,
      update: queued(writing.update.bind(writing)) as typeof writing.update,
      updateMany: queued(writing.updateMany.bind(writing)),
      delete: queued(writing.delete.bind(writing)) as typeof writing.delete,
      deleteMany: queued(writing.deleteMany.bind(writing)),
      consumeOne: queued(writing.consumeOne.bind(writing)) as typeof writing.consumeOne,
      incrementOne: queued(writing.incrementOne.bind(writing)) as typeof writing.incrementOne,
      findOne: reading.findOne.bind(reading) as typeof writing.findOne,
      findMany: reading.findMany.bind(reading) as typeof writing.findMany,
      count: reading.count.bind(reading),
    };
  };

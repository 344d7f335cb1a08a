/**
 * The sign-in library's way to the store. Its reads go to the reading connection and its writes
 * through the queue, so that a sign-in can never slip into somebody else's open transaction.
 */
import { drizzleAdapter } from 'better-auth/adapters/drizzle';
import type { BetterAuthOptions, DBAdapter } from 'better-auth/types';
import { authAccount, authSession, authUser, authVerification } from './schema/schema.ts';
import type { Store } from './store/store.ts';

const tables = { user: authUser, session: authSession, account: authAccount, verification: authVerification };

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
      findOne: reading.findOne.bind(reading) as typeof writing.findOne,
      findMany: reading.findMany.bind(reading) as typeof writing.findMany,
      count: reading.count.bind(reading),
    };
  };

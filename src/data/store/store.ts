/**
 * The store: one connection that writes, others that read.
 *
 * `write(fn)` queues: it sends BEGIN IMMEDIATE itself, awaits `fn`, then commits, or rolls back
 * when `fn` throws. A nested call joins the transaction that is open. Nothing slow belongs inside.
 * An acknowledgement is given after the commit has been synced to the file.
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { type Connection, connect, type Db } from './connection.ts';

export interface Store {
  readonly file: string;
  /** For reading. Inside a write it is the open transaction, so a write sees its own rows. */
  readonly read: Db;
  readonly write: <T>(fn: (tx: Db) => Promise<T> | T) => Promise<T>;
  /** The writing connection, for migrations, pragmas read back and backups. */
  readonly writer: Connection;
  readonly reader: Connection;
  readonly close: () => void;
}

export const openStore = (file: string): Store => {
  mkdirSync(dirname(file), { recursive: true });
  const writer = connect(file);
  const reader = connect(file);
  reader.client.pragma('query_only = ON');
  const scope = new AsyncLocalStorage<Db>();
  let tail: Promise<unknown> = Promise.resolve();

  const transact = async <T>(fn: (tx: Db) => Promise<T> | T): Promise<T> => {
    writer.client.exec('BEGIN IMMEDIATE');
    try {
      const result = await scope.run(writer.db, () => fn(writer.db));
      writer.client.exec('COMMIT');
      return result;
    } catch (error) {
      if (writer.client.inTransaction) writer.client.exec('ROLLBACK');
      throw error;
    }
  };

  const write = <T>(fn: (tx: Db) => Promise<T> | T): Promise<T> => {
    const open = scope.getStore();
    if (open) return Promise.resolve(fn(open));
    const run = tail.then(
      () => transact(fn),
      () => transact(fn),
    );
    tail = run.catch(() => undefined);
    return run;
  };

  const close = () => {
    reader.client.close();
    writer.client.close();
  };
  return {
    file,
    get read() {
      return scope.getStore() ?? reader.db;
    },
    write,
    writer,
    reader,
    close,
  };
};

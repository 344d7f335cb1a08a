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
  /** Work to do once, just before the open transaction commits; a later one of the same key replaces it. */
  readonly beforeCommit: (key: string, work: () => Promise<void>) => void;
  /** The writing connection, for migrations, pragmas read back and backups. */
  readonly writer: Connection;
  readonly reader: Connection;
  readonly close: () => void;
}

/** A transaction under way, and what it still has to do before it commits. */
interface Open {
  readonly tx: Db;
  readonly last: Map<string, () => Promise<void>>;
}

export const openStore = (file: string): Store => {
  mkdirSync(dirname(file), { recursive: true });
  const writer = connect(file);
  const reader = connect(file);
  reader.client.pragma('query_only = ON');
  const scope = new AsyncLocalStorage<Open>();
  let tail: Promise<unknown> = Promise.resolve();

  const transact = async <T>(fn: (tx: Db) => Promise<T> | T): Promise<T> => {
    writer.client.exec('BEGIN IMMEDIATE');
    try {
      const open: Open = { tx: writer.db, last: new Map() };
      const result = await scope.run(open, async () => {
        const value = await fn(writer.db);
        for (const work of open.last.values()) await work();
        return value;
      });
      writer.client.exec('COMMIT');
      return result;
    } catch (error) {
      if (writer.client.inTransaction) writer.client.exec('ROLLBACK');
      throw error;
    }
  };

  const write = <T>(fn: (tx: Db) => Promise<T> | T): Promise<T> => {
    const open = scope.getStore();
    if (open) return Promise.resolve(fn(open.tx));
    const run = tail.then(
      () => transact(fn),
      () => transact(fn),
    );
    tail = run.catch(() => undefined);
    return run;
  };

  const close = () => {
    for (const { client, statements } of [reader, writer]) {
      statements.clear();
      client.close();
    }
  };
  return {
    file,
    get read() {
      return scope.getStore()?.tx ?? reader.db;
    },
    write,
    beforeCommit: (key, work) => {
      const open = scope.getStore();
      if (!open) throw new Error('Only inside a write.');
      open.last.set(key, work);
    },
    writer,
    reader,
    close,
  };
};

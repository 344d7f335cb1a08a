/**
 * The store: one connection that writes, others that read.
 *
 * `write(fn)` queues: the store sends BEGIN IMMEDIATE itself, awaits `fn`, then commits, or rolls back
 * when `fn` throws. A nested call joins the transaction that is open. Nothing slow belongs inside.
 * Writes that wait at the same time share one commit, each inside a savepoint of its own, so that one
 * that fails takes nothing of its neighbours with it. An acknowledgement is given after the commit has
 * been synced to the file.
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { closeSync, existsSync, mkdirSync, openSync } from 'node:fs';
import { dirname } from 'node:path';
import { type Connection, connect, type Db } from './connection.ts';
import type { InsertedRow } from './statements.ts';
import { type WriteHealth, writeQueue } from './write-queue.ts';

export interface Store {
  readonly file: string;
  /** For reading. Inside a write it is the open transaction, so a write sees its own rows. */
  readonly read: Db;
  readonly write: <T>(fn: (tx: Db) => Promise<T> | T) => Promise<T>;
  /** Work to do once, just before the open transaction commits; a later one of the same key replaces it. */
  readonly beforeCommit: (key: string, work: () => Promise<void>) => void;
  /** Adds to what `work` is given in one, last of all before the open transaction commits. */
  readonly collect: <T>(key: string, item: T, work: (items: readonly T[]) => Promise<void>) => void;
  /** Rows of append-only tables that the open write has put in since it was asked last. */
  readonly takeInserted: () => readonly InsertedRow[];
  /** What the file has lately said of being written to. */
  readonly health: Readonly<WriteHealth>;
  /** The writing connection, for migrations, pragmas read back and backups. */
  readonly writer: Connection;
  readonly reader: Connection;
  readonly close: () => void;
}

/** A write under way, and what it still has to do before it ends. */
interface Open {
  readonly tx: Db;
  /** What a write left running must not join it after its end. */
  ended: boolean;
  readonly last: Map<string, () => Promise<void>>;
  readonly inserted: InsertedRow[];
  readonly collected: Map<string, { readonly items: unknown[]; readonly work: () => Promise<void> }>;
}

const toItsEnd = async <T>(open: Open, fn: (tx: Db) => Promise<T> | T): Promise<T> => {
  try {
    const value = await fn(open.tx);
    for (const work of open.last.values()) await work();
    for (const { work } of open.collected.values()) await work();
    return value;
  } finally {
    open.ended = true;
  }
};

/** What a write under way is told to do before it ends. */
const lastThingsOf = (
  current: () => Open | null,
): Pick<Store, 'beforeCommit' | 'collect' | 'takeInserted'> => {
  const open = (): Open => {
    const found = current();
    if (!found) throw new Error('Only inside a write.');
    return found;
  };
  return {
    beforeCommit: (key, work) => {
      open().last.set(key, work);
    },
    collect: <T>(key: string, item: T, work: (items: readonly T[]) => Promise<void>) => {
      const { collected } = open();
      const items: T[] = [];
      const found = collected.get(key) ?? { items, work: () => work(items) };
      found.items.push(item);
      collected.set(key, found);
    },
    takeInserted: () => open().inserted.splice(0),
  };
};

/** The store alone, with nobody to hear of its changes; `open-store.ts` opens it with everybody who does. */
export const openFile = (file: string): Store => {
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  // Made here, so that nobody else may read it; the engine gives what it puts beside it the same rights.
  if (!existsSync(file)) closeSync(openSync(file, 'a', 0o600));
  const writer = connect(file);
  const reader = connect(file);
  reader.client.pragma('query_only = ON');
  const scope = new AsyncLocalStorage<Open>();
  const health: WriteHealth = { committedAt: null, isFailing: false };
  const queue = writeQueue(writer, health);
  const current = (): Open | null => {
    const open = scope.getStore();
    return open && !open.ended ? open : null;
  };

  writer.statements.tellInserts((rows) => current()?.inserted.push(...rows));

  const write = <T>(fn: (tx: Db) => Promise<T> | T): Promise<T> => {
    const outer = current();
    if (outer) return Promise.resolve(fn(outer.tx));
    const open: Open = { tx: writer.db, ended: false, last: new Map(), inserted: [], collected: new Map() };
    const done = queue(() => scope.run(open, () => toItsEnd(open, fn)));
    // Whoever was reading before it reads on with what it wrote.
    return done.finally(reader.statements.remembered.forget);
  };

  const close = () => {
    for (const { client, statements } of [reader, writer]) {
      statements.clear();
      client.close();
    }
    // One that has been used is carried by every promise the process makes, whether its store is open or not.
    scope.disable();
  };
  return {
    file,
    get read() {
      return current()?.tx ?? reader.db;
    },
    write,
    ...lastThingsOf(current),
    health,
    writer,
    reader,
    close,
  };
};

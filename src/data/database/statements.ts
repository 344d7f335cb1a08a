/**
 * Statements of one connection, prepared once and kept. The driver's query builder prepares anew on
 * every call, which cost about as much as a lookup by key; it is handed this in place of the client.
 */
import type Client from 'libsql';
import { type Mode, type Remembered, rememberReads } from './remembered-reads.ts';

/** More than the product has; lists of ids make a text of their own for each length. */
const mostKept = 500;

type Bound = readonly unknown[];

interface CachedStatement {
  readonly run: (...values: Bound) => unknown;
  readonly all: (...values: Bound) => readonly unknown[];
  readonly get: (...values: Bound) => unknown;
  /** The same statement giving rows as arrays. */
  readonly raw: () => CachedStatement;
}

export interface Statements {
  readonly prepare: (sql: string) => CachedStatement;
  /** Tells of each statement as it runs, for tests that count them and read their plans; null = no longer. */
  readonly watch: (listener: ((sql: string) => void) | null) => void;
  /** Reads that the work under way has already made. */
  readonly remembered: Remembered;
  /** Lets go of all of them, before the connection closes. */
  readonly clear: () => void;
}

interface Around {
  readonly runs: (sql: string) => void;
  readonly remembered: Remembered;
}

/**
 * Array mode is a state of the driver's statement, so each mode has one of its own. `get` reads to the
 * end: a statement left in the middle would hold its snapshot, and the reader would go blind to later commits.
 */
const kept = (client: Client.Database, sql: string, { runs, remembered }: Around): CachedStatement => {
  const plain = client.prepare(sql);
  let arrays: CachedStatement | null = null;
  const of = (statement: Client.Statement, raw: () => CachedStatement, mode: Mode): CachedStatement => {
    const reads = remembered.readsOf(sql, mode);
    const all = (...values: Bound): readonly unknown[] =>
      reads(values, () => {
        runs(sql);
        return statement.all(...values);
      });
    const run = (...values: Bound): unknown => {
      runs(sql);
      remembered.wrote(sql);
      return statement.run(...values);
    };
    return { run, all, get: (...values) => all(...values)[0], raw };
  };
  const rawOf = (): CachedStatement => {
    arrays ??= of(client.prepare(sql).raw(), rawOf, 'arrays');
    return arrays;
  };
  return of(plain, rawOf, 'plain');
};

export const cacheStatements = (client: Client.Database): Statements => {
  const known = new Map<string, CachedStatement>();
  const remembered = rememberReads();
  let listener: ((sql: string) => void) | null = null;
  const around: Around = { runs: (sql) => listener?.(sql), remembered };
  return {
    prepare: (sql) => {
      const found = known.get(sql);
      if (found) return found;
      const [oldest] = known.keys();
      if (known.size >= mostKept && oldest !== undefined) known.delete(oldest);
      const statement = kept(client, sql, around);
      known.set(sql, statement);
      return statement;
    },
    watch: (next) => {
      listener = next;
    },
    remembered,
    clear: () => {
      known.clear();
      remembered.close();
    },
  };
};

/**
 * The mark stands on the handle itself and is named for the whole process: the server's start and its
 * routes are bundled apart, so a map kept in this module would be two maps.
 */
const mark = Symbol.for('loadgate.statements');

type Marked = { [mark]?: Statements };

/** Remembers whose statements a query handle's are; the connection says so when it is opened. */
export const belongTo = (handle: object, statements: Statements): void => {
  (handle as Marked)[mark] = statements;
};

export const statementsOf = (handle: object): Statements => {
  const found = (handle as Marked)[mark];
  if (!found) throw new Error('This handle was not opened by the store.');
  return found;
};

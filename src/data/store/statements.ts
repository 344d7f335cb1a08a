/**
 * Statements of one connection, prepared once and kept. The driver's query builder prepares anew on
 * every call, which cost about as much as a lookup by key; it is handed this in place of the client.
 */
import type Client from 'libsql';

/** More than the product has; lists of ids make a text of their own for each length. */
const mostKept = 500;

type Bound = readonly unknown[];

export interface KeptStatement {
  readonly run: (...values: Bound) => unknown;
  readonly all: (...values: Bound) => unknown[];
  readonly get: (...values: Bound) => unknown;
  /** The same statement giving rows as arrays. */
  readonly raw: () => KeptStatement;
}

export interface Statements {
  readonly prepare: (sql: string) => KeptStatement;
  /** Tells of each statement as it runs, for tests that count them and read their plans; null = no longer. */
  readonly watch: (listener: ((sql: string) => void) | null) => void;
  /** Lets go of all of them, before the connection closes. */
  readonly clear: () => void;
}

/**
 * Array mode is a state of the driver's statement, so each mode has one of its own. `get` reads to the
 * end: a statement left in the middle would hold its snapshot, and the reader would go blind to later commits.
 */
const kept = (client: Client.Database, sql: string, runs: (sql: string) => void): KeptStatement => {
  const plain = client.prepare(sql);
  let arrays: KeptStatement | null = null;
  const of = (statement: Client.Statement, raw: () => KeptStatement): KeptStatement => {
    const all = (...values: Bound): unknown[] => {
      runs(sql);
      return statement.all(...values);
    };
    const run = (...values: Bound): unknown => {
      runs(sql);
      return statement.run(...values);
    };
    return { run, all, get: (...values) => all(...values)[0], raw };
  };
  const rawOf = (): KeptStatement => {
    arrays ??= of(client.prepare(sql).raw(), rawOf);
    return arrays;
  };
  return of(plain, rawOf);
};

export const keepStatements = (client: Client.Database): Statements => {
  const known = new Map<string, KeptStatement>();
  let listener: ((sql: string) => void) | null = null;
  const runs = (sql: string): void => listener?.(sql);
  return {
    prepare: (sql) => {
      const found = known.get(sql);
      if (found) return found;
      const [oldest] = known.keys();
      if (known.size >= mostKept && oldest !== undefined) known.delete(oldest);
      const statement = kept(client, sql, runs);
      known.set(sql, statement);
      return statement;
    },
    watch: (next) => {
      listener = next;
    },
    clear: () => known.clear(),
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

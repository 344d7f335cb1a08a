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
  /** Told of each row put into one of the tables named at the start. */
  readonly tellInserts: (listener: (rows: readonly InsertedRow[]) => void) => void;
  /** Lets go of all of them, before the connection closes. */
  readonly clear: () => void;
}

/** A row that a statement has put into a table, as the file gives it back. */
export interface InsertedRow {
  readonly table: string;
  readonly row: Readonly<Record<string, unknown>>;
}

interface Around {
  readonly runs: (sql: string) => void;
  readonly remembered: Remembered;
  /** The table whose rows are told of when `sql` puts some in; null for every other statement. */
  readonly toldTable: (sql: string) => string | null;
  readonly inserted: (rows: readonly InsertedRow[]) => void;
}

const insertInto = /^insert into "(\w+)"/i;

/** The same insert, which answers what it has put in. */
const telling = (client: Client.Database, sql: string, table: string, { inserted }: Around) => {
  let statement: Client.Statement | null = null;
  return (...values: Bound): unknown => {
    statement ??= client.prepare(`${sql} returning *`);
    const rows = statement.all(...values) as readonly InsertedRow['row'][];
    inserted(rows.map((row) => ({ table, row })));
    return { changes: rows.length };
  };
};

/**
 * Array mode is a state of the driver's statement, so each mode has one of its own. `get` reads to the
 * end: a statement left in the middle would hold its snapshot, and the reader would go blind to later commits.
 */
const kept = (client: Client.Database, sql: string, around: Around): CachedStatement => {
  const { runs, remembered, toldTable } = around;
  const plain = client.prepare(sql);
  const table = toldTable(sql);
  const insert = table === null ? null : telling(client, sql, table, around);
  let arrays: CachedStatement | null = null;
  const of = (statement: Client.Statement, raw: () => CachedStatement, mode: Mode): CachedStatement => {
    const reads = remembered.readsOf(sql, mode);
    const all = (...values: Bound): readonly unknown[] =>
      reads(values, () => {
        if (insert)
          throw new Error(`Rows put into ${table} are answered to the audit; ask for none of them.`);
        runs(sql);
        return statement.all(...values);
      });
    const run = (...values: Bound): unknown => {
      runs(sql);
      remembered.wrote(sql);
      return insert ? insert(...values) : statement.run(...values);
    };
    return { run, all, get: (...values) => all(...values)[0], raw };
  };
  const rawOf = (): CachedStatement => {
    arrays ??= of(client.prepare(sql).raw(), rawOf, 'arrays');
    return arrays;
  };
  return of(plain, rawOf, 'plain');
};

/** `toldTables` are those of which each row that is put in is told. */
export const cacheStatements = (client: Client.Database, toldTables: ReadonlySet<string>): Statements => {
  const known = new Map<string, CachedStatement>();
  const remembered = rememberReads();
  let listener: ((sql: string) => void) | null = null;
  let inserted: Around['inserted'] = () => undefined;
  const around: Around = {
    runs: (sql) => listener?.(sql),
    remembered,
    toldTable: (sql) => {
      const [, table = ''] = insertInto.exec(sql) ?? [];
      return toldTables.has(table) ? table : null;
    },
    inserted: (rows) => inserted(rows),
  };
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
    tellInserts: (next) => {
      inserted = next;
    },
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

/**
 * Reads that have been made already, remembered until a table they read is written: inside a write until its
 * transaction ends, elsewhere while one piece of work looks at a record (`during`). One entry of a phone is
 * looked at by the engine, the doses and the worklist, and each asks for the same few things. Between BEGIN
 * IMMEDIATE and COMMIT nobody else can write, so the answer cannot have changed; outside a write the work goes
 * on with the file as it was when it asked.
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { forgetAll, type Known, noteSeen, nothingKnown, type Rows, workedOut } from './known-rows.ts';

export type { Rows } from './known-rows.ts';

type Reads = (values: readonly unknown[], read: () => Rows) => Rows;
/** How the driver hands rows over. */
export type Mode = 'plain' | 'arrays';

/** Does the work, and what is read meanwhile is read once. */
export type Reading = <T>(work: () => Promise<T>) => Promise<T>;

export interface Remembered {
  readonly begin: () => void;
  readonly end: () => void;
  /** Remembers what is read while `work` goes on; inside a write, or such work, it is one with it. */
  readonly during: Reading;
  /** The same for several pieces of work after one another, such as the questions of one page. */
  readonly over: () => Reading;
  readonly isRemembering: () => boolean;
  /** For one statement: the rows remembered for these values, or those `read` gives. */
  readonly readsOf: (sql: string, mode: Mode) => Reads;
  readonly rowsOf: (sql: string, mode: Mode, values: readonly unknown[]) => Rows | undefined;
  readonly remember: (sql: string, mode: Mode, values: readonly unknown[], rows: Rows) => void;
  readonly wrote: (sql: string) => void;
  /** What was worked out under this name, while every row it was worked out from is still remembered; else anew. */
  readonly worked: <T>(name: string, make: () => Promise<T>) => Promise<T>;
  /** Lets go of everything the work under way has read. */
  readonly forget: () => void;
  /** Before the connection closes: what remembers is carried by every promise of the process until then. */
  readonly close: () => void;
}

const readFrom = /\b(?:from|join)\s+"(\w+)"/gi;
const written = /^\s*(?:insert\s+(?:or\s+\w+\s+)?into|update|delete\s+from)\s+"(\w+)"/i;
const readOnly = /^\s*(?:select|with)\b/i;

const tables = new Map<string, ReadonlySet<string>>();
/** More than the product has texts; lists of ids make one of their own for each length. */
const mostTexts = 1000;

/** The tables a statement reads, worked out once for each text. */
const tablesOf = (sql: string): ReadonlySet<string> => {
  const known = tables.get(sql) ?? new Set([...sql.matchAll(readFrom)].map(([, name]) => name!));
  if (tables.size >= mostTexts) tables.clear();
  tables.set(sql, known);
  return known;
};

const keyOf = (mode: Mode, values: readonly unknown[]): string => `${mode} ${JSON.stringify(values)}`;

/** The rows of whatever work is under way. */
const rowsIn = (current: () => Known | null): Pick<Remembered, 'wrote' | 'remember' | 'rowsOf'> => ({
  wrote: (sql) => {
    const known = current();
    const table = known && written.exec(sql)?.[1];
    if (table === undefined) forgetAll(known);
    else
      for (const text of known?.rows.keys() ?? []) if (tablesOf(text).has(table!)) known?.rows.delete(text);
  },
  remember: (sql, mode, values, rows) => {
    const known = current();
    if (!known) return;
    const asked = keyOf(mode, values);
    const ofText = known.rows.get(sql) ?? new Map<string, Rows>();
    known.rows.set(sql, ofText.set(asked, rows));
    noteSeen(known, { sql, asked, rows });
  },
  rowsOf: (sql, mode, values) => {
    const known = current();
    const asked = keyOf(mode, values);
    const rows = known?.rows.get(sql)?.get(asked);
    if (known && rows) noteSeen(known, { sql, asked, rows });
    return rows;
  },
});

export const rememberReads = (): Remembered => {
  let inWrite: Known | null = null;
  const scope = new AsyncLocalStorage<Known>();
  const current = (): Known | null => inWrite ?? scope.getStore() ?? null;
  const { wrote, remember, rowsOf } = rowsIn(current);
  const readOnce = (sql: string, mode: Mode, values: readonly unknown[], read: () => Rows): Rows => {
    const found = rowsOf(sql, mode, values);
    if (found) return found;
    const rows = read();
    remember(sql, mode, values, rows);
    return rows;
  };
  const over = (): Reading => {
    const known = nothingKnown();
    return (work) => (current() ? work() : scope.run(known, work));
  };
  return {
    begin: () => {
      inWrite = nothingKnown();
    },
    end: () => {
      inWrite = null;
    },
    during: (work) => over()(work),
    over,
    isRemembering: () => current() !== null,
    readsOf: (sql, mode) =>
      readOnly.test(sql)
        ? (values, read) => (current() ? readOnce(sql, mode, values, read) : read())
        : (_, read) => {
            wrote(sql);
            return read();
          },
    rowsOf,
    remember,
    wrote,
    worked: (name, make) => {
      const known = current();
      return known ? workedOut(known, name, make) : make();
    },
    forget: () => forgetAll(current()),
    close: () => scope.disable(),
  };
};

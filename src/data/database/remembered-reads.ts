/**
 * Reads made inside a write, remembered until a table they read is written or the transaction ends.
 * One entry of a phone is looked at by the engine, the doses and the worklist, and each asks for the same
 * few things. Between BEGIN IMMEDIATE and COMMIT nobody else can write, so the answer cannot have changed.
 */
type Rows = readonly unknown[];
type Reads = (values: readonly unknown[], read: () => Rows) => Rows;

export interface Remembered {
  readonly begin: () => void;
  readonly end: () => void;
  /** For one statement: the rows remembered for these values, or those `read` gives. */
  readonly readsOf: (sql: string, mode: string) => Reads;
  readonly wrote: (sql: string) => void;
}

const named = /"(\w+)"/g;
const written = /^\s*(?:insert\s+(?:or\s+\w+\s+)?into|update|delete\s+from)\s+"(\w+)"/i;
const readOnly = /^\s*(?:select|with)\b/i;

/** Every quoted name; columns among them do no harm, for they are never written. */
const namesIn = (sql: string): ReadonlySet<string> =>
  new Set([...sql.matchAll(named)].map(([, name]) => name!));

export const rememberReads = (): Remembered => {
  let known: Map<string, { readonly names: ReadonlySet<string>; readonly rows: Rows }> | null = null;
  const forget = (table: string | undefined): void => {
    if (!known) return;
    if (table === undefined) known.clear();
    else for (const [key, { names }] of known) if (names.has(table)) known.delete(key);
  };
  const wrote = (sql: string): void => {
    if (known) forget(written.exec(sql)?.[1]);
  };
  return {
    begin: () => {
      known = new Map();
    },
    end: () => {
      known = null;
    },
    readsOf: (sql, mode) => {
      if (!readOnly.test(sql)) {
        return (_, read) => {
          wrote(sql);
          return read();
        };
      }
      const names = namesIn(sql);
      return (values, read) => {
        if (!known) return read();
        const key = `${mode} ${JSON.stringify(values)} ${sql}`;
        const found = known.get(key);
        if (found) return found.rows;
        const rows = read();
        known.set(key, { names, rows });
        return rows;
      };
    },
    wrote,
  };
};

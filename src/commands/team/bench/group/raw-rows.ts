/** Rows written straight to a table, many to a statement. The table's own CHECKs still hold for each. */
import type { Connection } from '#data/database/connection.ts';

export type Client = Connection['client'];
export type Value = string | number | null;

export interface RawRows {
  readonly add: (row: readonly Value[]) => void;
  /** Writes what is still held back. */
  readonly flush: () => void;
}

/** Well under the most variables one statement may bind. */
const mostValues = 2000;

export const rawRows = (client: Client, table: string, columns: readonly string[]): RawRows => {
  const perStatement = Math.floor(mostValues / columns.length);
  const one = `(${columns.map(() => '?').join(', ')})`;
  const insertOf = (rows: number) =>
    client.prepare(`INSERT INTO ${table} (${columns.join(', ')}) VALUES ${Array(rows).fill(one).join(', ')}`);
  const full = insertOf(perStatement);
  let held: Value[] = [];
  return {
    add: (row) => {
      if (row.length !== columns.length) throw new RangeError(`${table} has ${columns.length} columns.`);
      for (const value of row) held.push(value);
      if (held.length < perStatement * columns.length) return;
      full.run(held);
      held = [];
    },
    flush: () => {
      if (held.length === 0) return;
      insertOf(held.length / columns.length).run(held);
      held = [];
    },
  };
};

/** An id in the shape the product uses, in the order of making. */
export const numberedId = (kind: number, number: number): string => {
  const digits = number.toString(16).padStart(12, '0');
  return `${digits.slice(0, 8)}-${digits.slice(8)}-7000-8000-${kind.toString(16).padStart(12, '0')}`;
};

/**
 * Rows handed over as JSON text in one cell: those that belong to a row inside it, and all rows of a
 * query together. Each cell handed over by the driver costs, so a year of sessions with their sets and
 * answers comes three times faster this way; the aggregate is the dialect's, the rest of a query is not.
 */
import { is, type SQL, sql } from 'drizzle-orm';
import { SQLiteColumn, type SQLiteTable } from 'drizzle-orm/sqlite-core';

export type Cell = string | number | null | readonly Cells[];
export type Cells = readonly Cell[];

/** JSON in SQLite keeps 15 digits of a real number; as text with 17 it comes back the same number. */
const cellOf = (column: SQLiteColumn | SQL): SQL =>
  is(column, SQLiteColumn) && column.getSQLType() === 'real'
    ? sql`CASE WHEN ${column} IS NULL THEN NULL ELSE printf('%!.17g', ${column}) END`
    : sql`${column}`;

const together = (columns: readonly (SQLiteColumn | SQL)[]): SQL =>
  sql`json_group_array(json_array(${sql.join(columns.map(cellOf), sql.raw(', '))}))`;

/** Reads the rows of one cell. */
export const readEach =
  <T>(read: (cells: Cells) => T) =>
  (text: string): readonly T[] =>
    (JSON.parse(text) as Cells[]).map(read);

/** The rows of another table as one cell of a query's row. */
export const nestedRows = (
  columns: readonly SQLiteColumn[],
  from: SQLiteTable | SQL,
  where: SQL,
): SQL<string> => sql<string>`(SELECT ${together(columns)} FROM ${from} WHERE ${where})`;

const gathered = new WeakSet<object>();

/** Whether a field of a query is all of its rows in one cell, so that there is one row whatever it finds. */
export const isGathered = (field: object): boolean => gathered.has(field);

/** All rows of a query in one cell of one row, in no order; cells of nested rows are read by `rowsIn`. */
export const gatheredRows = <T>(
  columns: readonly (SQLiteColumn | SQL)[],
  read: (cells: Cells) => T,
): SQL<readonly T[]> => {
  const field = together(columns).mapWith(readEach(read)) as SQL<readonly T[]>;
  gathered.add(field);
  return field;
};

/** A cell of nested rows. */
export const rowsIn = <T>(cell: Cell, read: (cells: Cells) => T): T[] => (cell as readonly Cells[]).map(read);

/** A number column's cell. */
export const numberIn = (cell: Cell): number | null => (cell === null ? null : Number(cell));

/** A yes-or-no column's cell; null = asked and not answered. */
export const yesIn = (cell: Cell): boolean | null => (cell === null ? null : cell === 1);

/** A cell of JSON text, which most rows leave at the empty list. */
export const listIn = (cell: Cell): readonly string[] | null =>
  cell === null ? null : cell === '[]' ? [] : (JSON.parse(cell as string) as readonly string[]);

/**
 * The rows that belong to a row, brought along in one cell of it as JSON text. Each cell handed over by
 * the driver costs, so a session with its sets and answers comes two to three times faster this way
 * than in rows of their own; the aggregate is the dialect's, the rest of a query is not.
 */
import { type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';

export type Cell = string | number | null;

/** JSON in SQLite keeps 15 digits of a real number; as text with 17 it comes back the same number. */
const cellOf = (column: SQLiteColumn): SQL =>
  column.getSQLType() === 'real'
    ? sql`CASE WHEN ${column} IS NULL THEN NULL ELSE printf('%!.17g', ${column}) END`
    : sql`${column}`;

export const nestedRows = <T>(
  columns: readonly SQLiteColumn[],
  from: SQLiteTable | SQL,
  where: SQL,
  read: (cells: readonly Cell[]) => T,
): SQL<readonly T[]> => {
  const cells = sql.join(columns.map(cellOf), sql.raw(', '));
  return sql`(SELECT json_group_array(json_array(${cells})) FROM ${from} WHERE ${where})`.mapWith(
    (text: string) => (JSON.parse(text) as Cell[][]).map(read),
  ) as SQL<readonly T[]>;
};

/** A number column's cell. */
export const numberIn = (cell: Cell): number | null => (cell === null ? null : Number(cell));

/** A yes-or-no column's cell; null = asked and not answered. */
export const yesIn = (cell: Cell): boolean | null => (cell === null ? null : cell === 1);

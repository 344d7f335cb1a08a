/**
 * Rows into a table by a statement that is built once for each number of rows and then only bound. For
 * the tables written with every entry of a phone; the query builder would put its text together each time.
 */
import { getTableColumns, getTableName } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Db } from './connection.ts';
import { statementsOf } from './statements.ts';

interface Shape {
  readonly fields: readonly { readonly key: string; readonly toFile: (value: unknown) => unknown }[];
  /** The text for a number of rows, built on first use. */
  readonly textFor: (rows: number) => string;
}

const shapes = new WeakMap<SQLiteTable, Shape>();

/** A default that the builder would fill in is not known here, so tables with one are refused. */
const shapeOf = (table: SQLiteTable): Shape => {
  const known = shapes.get(table);
  if (known) return known;
  const columns = Object.entries(getTableColumns(table));
  const withDefault = columns.find(([, column]) => column.hasDefault);
  if (withDefault) throw new TypeError(`${getTableName(table)}.${withDefault[0]} has a default.`);
  const names = columns.map(([, column]) => `"${column.name}"`).join(', ');
  const head = `INSERT INTO "${getTableName(table)}" (${names}) VALUES `;
  const one = `(${columns.map(() => '?').join(', ')})`;
  const texts: string[] = [];
  const shape: Shape = {
    fields: columns.map(([key, column]) => ({ key, toFile: (value) => column.mapToDriverValue(value) })),
    textFor: (rows) => {
      texts[rows] ??= head + Array(rows).fill(one).join(', ');
      return texts[rows];
    },
  };
  shapes.set(table, shape);
  return shape;
};

/** A value left out is null, as the builder has it. */
export const insertRows = <T extends SQLiteTable>(
  tx: Db,
  table: T,
  rows: readonly T['$inferInsert'][],
): void => {
  if (rows.length === 0) return;
  const { fields, textFor } = shapeOf(table);
  const values: unknown[] = [];
  for (const row of rows as readonly Readonly<Record<string, unknown>>[]) {
    for (const { key, toFile } of fields) {
      const value = row[key];
      values.push(value === null || value === undefined ? null : toFile(value));
    }
  }
  statementsOf(tx)
    .prepare(textFor(rows.length))
    .run(...values);
};

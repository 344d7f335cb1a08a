/** The triggers of the file, written from the marks of the append-only tables. The migration tool writes none. */
import { getTableName } from 'drizzle-orm';
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core';
import { appendOnlyTables } from './kit.ts';
import './schema.ts';

export interface Trigger {
  readonly name: string;
  /** As the file's catalogue shows it. */
  readonly sql: string;
}

/** Names of the columns of each key by which one row may take the place of another. */
const keysOf = (table: SQLiteTable): readonly (readonly string[])[] => {
  const { columns, primaryKeys, indexes } = getTableConfig(table);
  const single = columns.filter((column) => column.primary).map((column) => [column.name]);
  const joined = primaryKeys.map((key) => key.columns.map((column) => column.name));
  const unique = indexes.filter(({ config }) => config.unique && !config.where);
  const named = unique.map(({ config }) => config.columns.map((column) => (column as { name: string }).name));
  // The row number as well: a statement may name it, and then replaces the row that has it.
  return [...single, ...joined, ...named, ['rowid']];
};

/** REPLACE takes a row away without its delete trigger, so a row whose key is there already is refused itself. */
const whenThere = (table: SQLiteTable, name: string): string => {
  const same = keysOf(table).map(
    (key) => `(${key.map((column) => `${column} = NEW.${column}`).join(' AND ')})`,
  );
  return ` WHEN EXISTS (SELECT 1 FROM ${name} WHERE ${same.join(' OR ')})`;
};

const acts = ['update', 'delete', 'replace'] as const;
type Act = (typeof acts)[number];

const conditionOf = (act: Act, table: SQLiteTable, keptWhile: string | null): string => {
  if (act === 'replace') return whenThere(table, getTableName(table));
  return act === 'delete' && keptWhile !== null ? ` WHEN ${keptWhile}` : '';
};

/**
 * Three for each append-only table, in order of name. The one before insertion makes the engine look, at each row
 * put in, for rows that refer to it; whatever refers to such a table has an index by that column.
 */
export const triggersOfSchema = (): readonly Trigger[] =>
  [...appendOnlyTables]
    .flatMap(([table, keptWhile]) => {
      const name = getTableName(table);
      return acts.map((act) => {
        const event = act === 'replace' ? 'INSERT' : act.toUpperCase();
        const when = conditionOf(act, table, keptWhile);
        const body = `BEGIN SELECT RAISE(ABORT, '${name} is append-only'); END`;
        return {
          name: `${name}_no_${act}`,
          sql: `CREATE TRIGGER ${name}_no_${act} BEFORE ${event} ON ${name}${when} ${body}`,
        };
      });
    })
    .sort((one, other) => (one.name < other.name ? -1 : 1));

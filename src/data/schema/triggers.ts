/** The triggers of the file, written from the marks of the append-only tables. The migration tool writes none. */
import { getTableName, is } from 'drizzle-orm';
import { getTableConfig, SQLiteTable } from 'drizzle-orm/sqlite-core';
import { appendOnlyTables } from './kit.ts';
import * as schema from './schema.ts';

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

/** Of a table the columns it can be searched by. */
const searchedBy = (table: SQLiteTable): readonly string[] => {
  const indexed = getTableConfig(table).indexes.map(({ config }) => config.columns[0] as { name: string });
  return [...keysOf(table).map(([first = '']) => first), ...indexed.map(({ name }) => name)];
};

const tables = (Object.values(schema) as readonly unknown[]).filter((one): one is SQLiteTable =>
  is(one, SQLiteTable),
);

/**
 * Whether rows of another table refer to this one by a column they cannot be searched by. A trigger before
 * insertion would make the engine look through all of them at each insertion, for the length of the table.
 */
const isReferredToUnsearched = (table: SQLiteTable): boolean =>
  tables.some((other) =>
    getTableConfig(other)
      .foreignKeys.map((key) => key.reference())
      .some(
        ({ foreignTable, columns }) =>
          foreignTable === table && !columns.some(({ name }) => searchedBy(other).includes(name)),
      ),
  );

/** REPLACE takes a row away without its delete trigger, so a row whose key is there already is refused itself. */
const whenThere = (table: SQLiteTable, name: string): string => {
  const same = keysOf(table).map(
    (key) => `(${key.map((column) => `${column} = NEW.${column}`).join(' AND ')})`,
  );
  return ` WHEN EXISTS (SELECT 1 FROM ${name} WHERE ${same.join(' OR ')})`;
};

type Act = 'update' | 'delete' | 'replace';

/**
 * Sessions, prescriptions and decisions have no trigger of their own against replacement: this product's
 * connections let REPLACE fire the one against deletion, and behind it a digest in the audit shows it.
 */
const actsAgainst = (table: SQLiteTable): readonly Act[] =>
  isReferredToUnsearched(table) ? ['update', 'delete'] : ['update', 'delete', 'replace'];

const conditionOf = (act: Act, table: SQLiteTable, keptWhile: string | null): string => {
  if (act === 'replace') return whenThere(table, getTableName(table));
  return act === 'delete' && keptWhile !== null ? ` WHEN ${keptWhile}` : '';
};

/** Two or three for each append-only table, in order of name. */
export const triggersOfSchema = (): readonly Trigger[] =>
  [...appendOnlyTables]
    .flatMap(([table, keptWhile]) => {
      const name = getTableName(table);
      return actsAgainst(table).map((act) => {
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

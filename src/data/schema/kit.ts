/**
 * The column kit: tables are declared once against these few words, so that a second SQL dialect
 * needs a second kit and no second schema. Ids are text; instants are integer milliseconds; civil
 * days are ISO text; JSON is text.
 */
import { sql } from 'drizzle-orm';
import {
  check,
  customType,
  index,
  integer,
  primaryKey,
  real,
  type SQLiteTable,
  sqliteTable,
  text,
  uniqueIndex,
} from 'drizzle-orm/sqlite-core';

/** JSON held as text; parsing is the driver border's work, never a query's. */
const jsonText = <T>(name: string) =>
  customType<{ data: T; driverData: string }>({
    dataType: () => 'text',
    toDriver: (value) => JSON.stringify(value),
    fromDriver: (value) => JSON.parse(value) as T,
  })(name);

/** Texts a column is known to repeat, row after row, and what they say. */
const mostRemembered = 256;

/**
 * JSON that most rows of a table share word for word. Each text is parsed once and the same frozen
 * value given for every row that holds it; reading a thousand rows then parses a few texts.
 */
const sharedJsonText = <T extends object>(name: string) => {
  const known = new Map<string, Readonly<T>>();
  return customType<{ data: Readonly<T>; driverData: string }>({
    dataType: () => 'text',
    toDriver: (value) => JSON.stringify(value),
    fromDriver: (text) => {
      const before = known.get(text);
      if (before) return before;
      const value = Object.freeze(JSON.parse(text) as T);
      if (known.size >= mostRemembered) known.clear();
      known.set(text, value);
      return value;
    },
  })(name);
};

/** Each append-only table with the SQL condition on OLD under which a row may not be deleted; null = never. */
const keptWhile = new Map<SQLiteTable, string | null>();
export const appendOnlyTables: ReadonlyMap<SQLiteTable, string | null> = keptWhile;

export const kit = {
  table: sqliteTable,
  /** A table whose rows stay as they were recorded, a correction being a new row; triggers refuse the rest. */
  appendOnly: ((...declared: Parameters<typeof sqliteTable>) => {
    const table = sqliteTable(...declared);
    keptWhile.set(table, null);
    return table;
  }) as typeof sqliteTable,
  /** Rows of an append-only table may leave once `condition`, SQL on OLD, no longer holds. */
  keptWhile: (table: SQLiteTable, condition: string) => {
    keptWhile.set(table, condition);
  },
  id: (name: string) => text(name).notNull(),
  idOrNull: (name: string) => text(name),
  text: (name: string) => text(name).notNull(),
  textOrNull: (name: string) => text(name),
  word: <const V extends readonly [string, ...string[]]>(name: string, values: V) =>
    text(name, { enum: values }).notNull(),
  wordOrNull: <const V extends readonly [string, ...string[]]>(name: string, values: V) =>
    text(name, { enum: values }),
  whole: (name: string) => integer(name).notNull(),
  wholeOrNull: (name: string) => integer(name),
  real: (name: string) => real(name).notNull(),
  realOrNull: (name: string) => real(name),
  yes: (name: string) => integer(name, { mode: 'boolean' }).notNull(),
  yesOrNull: (name: string) => integer(name, { mode: 'boolean' }),
  /** Epoch milliseconds. */
  instant: (name: string) => integer(name).notNull(),
  instantOrNull: (name: string) => integer(name),
  /** A date object, for tables whose shape the sign-in library fixes. */
  moment: (name: string) => integer(name, { mode: 'timestamp_ms' }).notNull(),
  momentOrNull: (name: string) => integer(name, { mode: 'timestamp_ms' }),
  /** Civil day, YYYY-MM-DD. */
  day: (name: string) => text(name).notNull(),
  dayOrNull: (name: string) => text(name),
  json: <T>(name: string) => jsonText<T>(name).notNull(),
  sharedJson: <T extends object>(name: string) => sharedJsonText<T>(name).notNull(),
  jsonOrNull: <T>(name: string) => jsonText<T>(name),
  key: primaryKey,
  index,
  unique: uniqueIndex,
  check,
};

/** SQL list of quoted words for a CHECK. */
export const words = (values: readonly string[]) => sql.raw(values.map((value) => `'${value}'`).join(', '));

/** A score that is null or a whole number within bounds; SQLite would keep 3.5 in an integer column. */
export const wholeWithin = (column: unknown, low: number, high: number) =>
  sql`${column} IS NULL OR (typeof(${column}) = 'integer' AND ${column} BETWEEN ${sql.raw(`${low} AND ${high}`)})`;

/** Shape of a civil day in a CHECK. */
export const dayShape = '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]';

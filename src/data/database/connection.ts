/** One connection to the embedded file, with the settings that durability and integrity rest on. */
import { BetterSQLiteSession } from 'drizzle-orm/better-sqlite3/session';
import { createTableRelationsHelpers, extractTablesRelationalConfig } from 'drizzle-orm/relations';
import { BaseSQLiteDatabase, SQLiteSyncDialect } from 'drizzle-orm/sqlite-core';
import Client from 'libsql';
import { digestedTables } from '../audit/digested-tables.ts';
import * as schema from '../schema/schema.ts';
import { belongTo, cacheStatements, type Statements } from './statements.ts';

export type Db = BaseSQLiteDatabase<'sync', unknown, typeof schema>;

export interface Connection {
  readonly db: Db;
  readonly client: Client.Database;
  readonly statements: Statements;
}

/** What a connection must read back after opening; a test compares. */
const durability = {
  journal_mode: 'wal',
  synchronous: 2,
  foreign_keys: 1,
  /** REPLACE then fires the triggers against deletion, where it would take a row away without a word. */
  recursive_triggers: 1,
  /** What is deleted is overwritten where it stood. */
  secure_delete: 1,
  busy_timeout: 5000,
} as const;

/**
 * The driver is synchronous; callers await anyway, so that another engine can stand here.
 * The driver's own transaction helper is never used: given an async callback it commits before
 * the awaited work, without an error.
 */
export const connect = (file: string): Connection => {
  const client = new Client(file, { timeout: durability.busy_timeout });
  client.pragma('journal_mode = WAL');
  client.pragma('synchronous = FULL');
  client.pragma('foreign_keys = ON');
  client.pragma('recursive_triggers = ON');
  client.pragma('secure_delete = ON');
  client.pragma(`busy_timeout = ${durability.busy_timeout}`);
  client.pragma('cache_size = -32768');
  // What a savepoint may have to undo is held in memory; over 64 kB it would go to a file of its own.
  client.pragma('temp_store = MEMORY');
  const statements = cacheStatements(client, digestedTables);
  const dialect = new SQLiteSyncDialect();
  const relational = extractTablesRelationalConfig(schema, createTableRelationsHelpers);
  const config = { fullSchema: schema, schema: relational.tables, tableNamesMap: relational.tableNamesMap };
  const session = new BetterSQLiteSession(statements as never, dialect, config as never);
  const db = new BaseSQLiteDatabase('sync', dialect, session as never, config as never) as unknown as Db;
  belongTo(db, statements);
  return { db, client, statements };
};

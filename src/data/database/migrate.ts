/**
 * Brings a file to this release's schema. An older file is copied first; one from a newer release, or
 * from before this baseline, is refused with the reason.
 */
import { rmSync } from 'node:fs';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import { headsFileOf } from '../audit/audit-heads.ts';
import { isWritten, writeBackup } from '../backup/write-backup.ts';
import type { Store } from './store.ts';

export type Migrated =
  | { readonly ok: true; readonly applied: number; readonly backup: string | null }
  | { readonly ok: false; readonly found: 'newer' | 'earlier-baseline'; readonly reason: string };

interface Journal {
  readonly hash: string;
  readonly created_at: number;
}

const appliedOf = (store: Store): readonly Journal[] => {
  const table = store.writer.client
    .prepare("SELECT name FROM sqlite_master WHERE name = '__drizzle_migrations'")
    .get();
  if (!table) return [];
  return store.writer.client
    .prepare('SELECT hash, created_at FROM __drizzle_migrations ORDER BY created_at')
    .all() as Journal[];
};

const refused = (found: 'newer' | 'earlier-baseline', file: string): Migrated & { readonly ok: false } => ({
  ok: false,
  found,
  reason:
    found === 'newer'
      ? `The file ${file} was written by a newer release. Start that release, or restore a backup made before it.`
      : `The file ${file} was made before this release's first schema step and cannot be brought forward. Start the release that made it, or name another file with DATABASE_FILE; a file of the demo clinic alone is replaced by npm run demo.`,
});

/** Why a file cannot be brought to this release's schema; null when it can. Changes nothing. */
export const schemaRefused = (store: Store, folder: string): (Migrated & { readonly ok: false }) | null => {
  const wanted = readMigrationFiles({ migrationsFolder: folder });
  const known = new Set(wanted.map((migration) => migration.folderMillis));
  const unknown = appliedOf(store).filter((row) => !known.has(Number(row.created_at)));
  if (unknown.length === 0) return null;
  const isEarlier = unknown.some((row) => Number(row.created_at) < wanted[0]!.folderMillis);
  return refused(isEarlier ? 'earlier-baseline' : 'newer', store.file);
};

/** The copy made before a step is sealed with the audit key, as every backup is; an empty file needs neither. */
const backedUp = (store: Store, step: number, auditKey: Uint8Array | null): string | null => {
  if (!isWritten(store.file)) return null;
  if (!auditKey) throw new Error('A file that holds rows is brought forward with its audit key at hand.');
  const at = Date.now();
  const folder = `${store.file}.backups`;
  // Each step names its copies anew; what one of another step was killed over is left by nobody else.
  const isOwn = (name: string) => /^before-\d+-at$/.test(name);
  return writeBackup(store, auditKey, { folder, name: `before-${step}-at`, at, isOwn });
};

export const migrateStore = (store: Store, folder: string, auditKey: Uint8Array | null = null): Migrated => {
  const found = schemaRefused(store, folder);
  if (found) return found;
  const wanted = readMigrationFiles({ migrationsFolder: folder });
  const applied = appliedOf(store);
  const pending = wanted.filter(
    (migration) => !applied.some((row) => Number(row.created_at) === migration.folderMillis),
  );
  if (pending.length === 0) return { ok: true, applied: 0, backup: null };
  const backup = applied.length > 0 ? backedUp(store, pending[0]!.folderMillis, auditKey) : null;
  const { client } = store.writer;
  client.exec('BEGIN IMMEDIATE');
  try {
    client.exec(
      'CREATE TABLE IF NOT EXISTS __drizzle_migrations (id INTEGER PRIMARY KEY AUTOINCREMENT, hash text NOT NULL, created_at numeric)',
    );
    for (const migration of pending) {
      for (const statement of migration.sql) client.exec(statement);
      client
        .prepare('INSERT INTO __drizzle_migrations (hash, created_at) VALUES (?, ?)')
        .run(migration.hash, migration.folderMillis);
    }
    client.exec('COMMIT');
  } catch (error) {
    if (client.inTransaction) client.exec('ROLLBACK');
    throw error;
  }
  return { ok: true, applied: pending.length, backup };
};

/** Steps of this release that the file has not seen; a file of a newer release has none. */
export const pendingMigrations = (store: Store, folder: string): number => {
  const applied = new Set(appliedOf(store).map((row) => Number(row.created_at)));
  return readMigrationFiles({ migrationsFolder: folder }).filter((one) => !applied.has(one.folderMillis))
    .length;
};

/** Ends a store and takes its file away, with everything that speaks of its rows alone. */
export const removeStore = (store: Store): void => {
  store.close();
  const { file } = store;
  for (const one of [file, `${file}-wal`, `${file}-shm`, headsFileOf(file)]) rmSync(one, { force: true });
};

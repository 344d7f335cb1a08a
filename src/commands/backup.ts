/**
 * Makes a backup of the file into a folder, beside a server that goes on working. The keys are not in it: copy
 * them once, to another place. With --keep only the newest so many stay. With a backup key in BACKUP_KEY_FILE it
 * is one encrypted file.
 */
import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import {
  type BackupPlace,
  halfWrittenIn,
  keepNewest,
  writeBackup,
  writeEncryptedBackup,
} from '#data/backup/write-backup.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { auditKeysFor, keyFrom } from '#server/keys.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';
import { holdFile } from './server/one-server.mjs';

const usage = 'Usage: DATABASE_FILE=… npm run backup -- --to FOLDER [--keep N]';
export const backupName = 'loadgate';

const askedIn = (args: readonly string[]): { readonly to: string; readonly keep: number | null } => {
  try {
    const options = { to: { type: 'string' }, keep: { type: 'string' } } as const;
    const { to, keep } = parseArgs({ args: [...args], options }).values;
    const isNumber = keep === undefined || /^[1-9]\d{0,4}$/.test(keep);
    if (to && isNumber) return { to: path.resolve(to), keep: keep === undefined ? null : Number(keep) };
  } catch {
    // Said below, as for what is missing.
  }
  throw new CannotGoOn(usage, 2);
};

const running = (folder: string, holder: string): string =>
  `Another backup${holder} is being written to ${path.dirname(folder)}. Wait for it to end.`;

/** A key that lies with what it closes closes nothing. */
const requireApart = (keyFile: string, folder: string): void => {
  if (path.relative(folder, path.resolve(keyFile)).startsWith('..')) return;
  throw new CannotGoOn(
    `The backup key ${keyFile} lies in the folder of the backups, where whoever has them has it too. Move it elsewhere and name its new place with BACKUP_KEY_FILE.`,
    2,
  );
};

const written = (store: Store, settings: ReturnType<typeof readEnvironment>, place: BackupPlace): string => {
  const auditKey = auditKeysFor(store, settings).at(-1)!;
  const { BACKUP_KEY_FILE: keyFile } = settings;
  return keyFile === null
    ? writeBackup(store, auditKey, place)
    : writeEncryptedBackup(store, { auditKey, backupKey: keyFrom(keyFile) }, place);
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { to, keep } = askedIn(args);
  const settings = readEnvironment();
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  if (settings.BACKUP_KEY_FILE) requireApart(settings.BACKUP_KEY_FILE, to);
  mkdirSync(to, { recursive: true, mode: 0o700 });
  const lock = holdFile(path.join(to, 'backup'), running);
  const store = openStore(file);
  try {
    const backup = written(store, settings, { folder: to, name: backupName, at: Date.now() });
    console.log(`backup ${backup}`);
    for (const old of keep === null ? [] : keepNewest(to, backupName, keep)) console.log(`removed ${old}`);
    for (const one of [to, `${file}.backups`].flatMap(halfWrittenIn)) {
      console.log(`half-written ${one}: no backup. Remove it once nothing writes to it any more.`);
    }
    return 0;
  } finally {
    store.close();
    lock.release();
  }
};

/**
 * Puts a backup into a fresh place. It gets its name only when it has proved itself: every byte, every count, the
 * end of each audit chain, the chains themselves and each row of the record against them.
 */
import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { headsFileOf } from '#data/audit/audit-heads.ts';
import type { AuditKeys } from '#data/audit/seal.ts';
import { triggerFindings } from '#data/audit/verify-triggers.ts';
import { type Manifest, otherKeys, readManifest } from '#data/backup/manifest.ts';
import {
  copyBackup,
  differencesFrom,
  inTheWay,
  removeUnproven,
  settle,
  unprovenFile,
} from '#data/backup/restore-backup.ts';
import { openStore } from '#data/open-store.ts';
import { keysForRestored } from '#server/keys.ts';
import { withUnpacked } from './backups/unpacked.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';
import { verifyHistory } from './verify-audit.ts';

const usage = 'Usage: npm run restore -- --from BACKUP --to FILE [--key FILE]';

interface Asked {
  readonly from: string;
  readonly to: string;
  /** Of an encrypted backup, where it is another than BACKUP_KEY_FILE names. */
  readonly key: string | null;
}

const askedIn = (args: readonly string[]): Asked => {
  try {
    const options = { from: { type: 'string' }, to: { type: 'string' }, key: { type: 'string' } } as const;
    const { from, to, key = null } = parseArgs({ args: [...args], options }).values;
    if (from && to) return { from: path.resolve(from), to: path.resolve(to), key };
  } catch {
    // Said below, as for what is missing.
  }
  throw new CannotGoOn(usage, 2);
};

const requireFresh = (from: string, to: string): void => {
  if (!existsSync(from)) throw new CannotGoOn(`The backup ${from} does not exist.`, 2);
  const there = inTheWay(to);
  if (there.length > 0) {
    throw new CannotGoOn(`${there.join(', ')} is there already. A backup is restored into a fresh place.`, 2);
  }
};

const requireEqual = (differences: readonly string[]): void => {
  if (differences.length === 0) return;
  for (const one of differences) console.log(`differs: ${one}`);
  throw new CannotGoOn('Nothing was restored: what arrived is not what was backed up. Take another backup.');
};

const requireHistory = async (to: string, keys: AuditKeys): Promise<void> => {
  const store = openStore(unprovenFile(to));
  try {
    requireEqual(triggerFindings(store));
    const findings = await verifyHistory(store, keys, headsFileOf(store.file));
    if (findings > 0) throw new CannotGoOn('Nothing was restored: the history in this backup does not hold.');
    store.writer.client.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    store.close();
  }
};

const told = ({ rows, bytes, madeAt, chains }: Manifest): string => {
  const total = Object.values(rows).reduce((sum, count) => sum + count, 0);
  return `${bytes} bytes, ${total} rows in ${Object.keys(rows).length} tables and the ends of ${chains.length} audit chains are those of the backup of ${madeAt}`;
};

const restored = async (from: string, to: string, settings: ReturnType<typeof readEnvironment>) => {
  const { auditKeys, fingerprints } = keysForRestored(to, settings);
  const read = readManifest(from, auditKeys);
  if ('problem' in read) throw new CannotGoOn(`Nothing was restored: ${read.problem}`);
  const { manifest } = read;
  copyBackup(from, to);
  try {
    requireEqual(otherKeys(manifest, fingerprints));
    requireEqual(differencesFrom(manifest, unprovenFile(to)));
    await requireHistory(to, auditKeys);
    settle(to);
  } finally {
    removeUnproven(to);
  }
  return manifest;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { from, to, key } = askedIn(args);
  requireFresh(from, to);
  const settings = readEnvironment();
  keysForRestored(to, settings);
  mkdirSync(path.dirname(to), { recursive: true, mode: 0o700 });
  const named = { beside: to, keyFile: key ?? settings.BACKUP_KEY_FILE };
  const manifest = await withUnpacked(from, named, (backup) => restored(backup, to, settings));
  console.log(told(manifest));
  console.log(`restored ${to}`);
  return 0;
};

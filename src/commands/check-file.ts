/**
 * Looks whether a file can be worked with, and changes nothing: pages, references and texts, the triggers, its
 * keys, who else may read it, and for a backup whether it is still what its manifest says. The history is
 * verified by verify-audit.
 */
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { triggerFindings, triggerFindingsInFile } from '#data/audit/verify-triggers.ts';
import { encryptedWith } from '#data/backup/encrypted-file.ts';
import { manifestFileOf, otherKeys, readManifest } from '#data/backup/manifest.ts';
import { differencesFrom } from '#data/backup/restore-backup.ts';
import { findingsInFile } from '#data/database/file-check.mjs';
import { openStore } from '#data/open-store.ts';
import { openToOthers } from '#server/file-modes.ts';
import { keyProblems, keysForRestored } from '#server/keys.ts';
import { withUnpacked } from './backups/unpacked.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const usage = 'Usage: [DATABASE_FILE=…] npm run check-file [-- --file FILE [--key FILE]]';

const askedIn = (
  args: readonly string[],
  own: string,
): { readonly file: string; readonly key: string | null } => {
  try {
    const options = { file: { type: 'string' }, key: { type: 'string' } } as const;
    const { file = own, key = null } = parseArgs({ args: [...args], options }).values;
    if (existsSync(file)) return { file, key };
    throw new CannotGoOn(`The file ${file} does not exist.`, 2);
  } catch (error) {
    throw error instanceof CannotGoOn ? error : new CannotGoOn(usage, 2);
  }
};

const tell = (about: string, findings: readonly string[]): number => {
  for (const finding of findings) console.log(`${about}: ${finding}`);
  return findings.length;
};

/** A backup is compared byte by byte and never opened for writing, which would change it. */
const partsFindings = (file: string, settings: ReturnType<typeof readEnvironment>): readonly string[] => {
  const { auditKeys, fingerprints } = keysForRestored(settings.DATABASE_FILE, settings);
  const read = readManifest(file, auditKeys);
  if ('problem' in read) return [read.problem];
  const differences = differencesFrom(read.manifest, file);
  const triggers = differences.length > 0 ? [] : triggerFindingsInFile(file);
  return [...otherKeys(read.manifest, fingerprints), ...differences, ...triggers];
};

const backupFindings = (
  file: string,
  key: string | null,
  settings: ReturnType<typeof readEnvironment>,
): Promise<readonly string[]> => {
  const named = { beside: settings.DATABASE_FILE, keyFile: key ?? settings.BACKUP_KEY_FILE };
  return withUnpacked(file, named, async (parts) => partsFindings(parts, settings));
};

const isBackup = (file: string): boolean => existsSync(manifestFileOf(file)) || encryptedWith(file) !== null;

/** Of a file in use; what is damaged is not opened. */
const ownFindings = (file: string, settings: ReturnType<typeof readEnvironment>): number => {
  const { damage, strays } = findingsInFile(file);
  const found = tell('file', [...damage, ...strays]);
  if (damage.length > 0) return found;
  const store = openStore(file);
  try {
    return found + tell('triggers', triggerFindings(store)) + tell('keys', keyProblems(store, settings));
  } finally {
    store.close();
  }
};

export const run = async (args: readonly string[]): Promise<number> => {
  const settings = readEnvironment();
  const { file, key } = askedIn(args, settings.DATABASE_FILE);
  const open = openToOthers(file).map((place) => `others may read or write ${place}`);
  const findings =
    tell('rights', open) +
    (isBackup(file)
      ? tell('backup', await backupFindings(file, key, settings))
      : ownFindings(file, settings));
  console.log(findings === 0 ? `${file} is whole` : `${file}: ${findings} findings`);
  return findings > 0 ? 1 : 0;
};

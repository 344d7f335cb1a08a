/**
 * The keys of a file on paper, and back: prints the page that is kept sealed elsewhere, takes a key typed from it,
 * makes a key for backups, and changes the encryption or the audit key. Never writes over a key that is there.
 */
import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { parseArgs } from 'node:util';
import { openStore } from '#data/open-store.ts';
import { changeAuditKey, changeEncryptionKey } from '#server/change-key.ts';
import { type KeyName, type KeyOnPage, keyFromTyped, keyNames, keyPage } from '#server/key-page.ts';
import { keyFiles, keyFrom, keyProblems, writeKey } from '#server/keys.ts';
import { openRuntime } from '#server/runtime.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';
import { holdFile } from './server/one-server.mjs';

const usage =
  'Usage: [DATABASE_FILE=…] npm run keys -- --page | --make-backup-key FILE | --change-encryption-key | --change-audit-key | --type-back audit|encryption|backup --to FILE';

interface Asked {
  readonly page: boolean;
  readonly change: 'encryption' | 'audit' | null;
  readonly make: string | null;
  readonly typed: { readonly name: KeyName; readonly to: string } | null;
}

const askedIn = (args: readonly string[]): Asked => {
  try {
    const options = {
      page: { type: 'boolean' },
      'change-encryption-key': { type: 'boolean' },
      'change-audit-key': { type: 'boolean' },
      'make-backup-key': { type: 'string' },
      'type-back': { type: 'string' },
      to: { type: 'string' },
    } as const;
    const values = parseArgs({ args: [...args], options }).values;
    const { 'change-encryption-key': encryption = false, 'change-audit-key': audit = false } = values;
    const change = encryption ? 'encryption' : audit ? 'audit' : null;
    const { page = false, 'make-backup-key': make = null, to = null } = values;
    const name = keyNames.find((one) => one === values['type-back']);
    const typed = name && to ? { name, to } : null;
    const isWhole = (values['type-back'] === undefined && to === null) || typed !== null;
    if (isWhole && [page, encryption, audit, make !== null, typed !== null].filter(Boolean).length === 1)
      return { page, change, make, typed };
  } catch {
    // Said below, as for what is missing.
  }
  throw new CannotGoOn(usage, 2);
};

const requireFree = (file: string): void => {
  if (existsSync(file))
    throw new CannotGoOn(`${file} is there already. Name a file that is not there yet.`, 2);
};

/** Only keys that open the file are worth a page. */
const requireOwnKeys = (settings: ReturnType<typeof readEnvironment>): void => {
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const store = openStore(file);
  try {
    const problems = keyProblems(store, settings);
    if (problems.length > 0) throw new CannotGoOn(problems.join('\n'));
  } finally {
    store.close();
  }
};

const page = (): number => {
  const settings = readEnvironment();
  requireOwnKeys(settings);
  const { DATABASE_FILE: file, BACKUP_KEY_FILE: backup } = settings;
  const keys: KeyOnPage[] = keyFiles(file, settings).map((one) => ({ ...one, key: keyFrom(one.file) }));
  if (backup) {
    keys.push({ name: 'backup', without: 'no encrypted backup can be opened', key: keyFrom(backup) });
  }
  console.log(keyPage(keys, file, new Date().toISOString().slice(0, 10)));
  return 0;
};

const serving = (file: string, holder: string): string =>
  `A server${holder} is running on ${file}. Stop it first: it goes on with the key it was started with.`;

const changes = {
  encryption: {
    by: changeEncryptionKey,
    said: 'Everybody signs in anew. The earlier key stays beside it, for what phones have not sent yet. Make a backup and print the page again now: earlier backups open with the earlier key alone.',
  },
  audit: {
    by: changeAuditKey,
    said: 'Invitations not used yet work no more: make new ones. The earlier key stays beside it and is needed to verify what was written before; keep the page printed with it. Make a backup and print the page again now.',
  },
} as const;

const changeKey = async (which: keyof typeof changes): Promise<number> => {
  const settings = readEnvironment();
  const { DATABASE_FILE: file } = settings;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const lock = holdFile(file, serving);
  try {
    const at = openRuntime(settings);
    try {
      console.log(`changed the ${which} key in ${await changes[which].by(at)}`);
    } finally {
      at.store.close();
    }
  } finally {
    lock.release();
  }
  console.log(changes[which].said);
  return 0;
};

const typeBack = async (name: KeyName, to: string, typing: () => Promise<string>): Promise<number> => {
  requireFree(to);
  const read = keyFromTyped(name, await typing());
  if (!read.ok) throw new CannotGoOn(`Nothing was written. ${read.problems.join(' ')} Type the lines again.`);
  writeKey(to, read.key);
  console.log(`wrote the ${name} key to ${to}`);
  return 0;
};

const typedHere = (): Promise<string> => {
  console.log('Type the four lines of the key with their numbers, then end with Ctrl+D:');
  return text(process.stdin);
};

export const run = async (args: readonly string[], typing = typedHere): Promise<number> => {
  const asked = askedIn(args);
  if (asked.typed) return typeBack(asked.typed.name, asked.typed.to, typing);
  if (asked.change) return changeKey(asked.change);
  if (asked.make === null) return page();
  requireFree(asked.make);
  writeKey(asked.make, randomBytes(32));
  console.log(`made a backup key in ${asked.make}. Print it now: npm run keys -- --page`);
  return 0;
};

/**
 * Secrets kept in files of their own, outside the database, readable by the owner only. They are made for
 * an empty file and for no other: a file that holds records is opened with the keys it was made with, or not.
 */
import { createHmac, randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { CannotGoOn } from '#commands/say.mjs';
import {
  fingerprintOf,
  fingerprintsIn,
  isPopulated,
  noteFingerprints,
} from '#data/database/key-fingerprints.ts';
import type { Store } from '#data/database/store.ts';

/** The key in a file. */
export const keyFrom = (file: string): Uint8Array => {
  const text = readFileSync(file, 'utf8').trim();
  if (!/^[0-9a-f]{64}$/.test(text)) {
    throw new CannotGoOn(
      `${file} must hold 64 hexadecimal digits; it holds something else. Put the key back from your copy of it.`,
    );
  }
  return Buffer.from(text, 'hex');
};

/** Never over a key that is there. */
export const writeKey = (file: string, key: Uint8Array): void => {
  mkdirSync(path.dirname(file), { recursive: true, mode: 0o700 });
  writeFileSync(file, Buffer.from(key).toString('hex'), { mode: 0o600, flag: 'wx' });
};

const makeKey = (file: string): void => writeKey(file, randomBytes(32));

export interface Keys {
  readonly audit: Uint8Array;
  /** The same with the earlier ones, from the first on: rows of their time are verified with them. */
  readonly auditKeys: readonly Uint8Array[];
  /** Signs session cookies. */
  readonly signIn: string;
  /** From which each clinic's key pair for entries of phones is made. */
  readonly phoneEntries: Uint8Array;
  /** The same of earlier encryption keys: a phone may still hold what it encrypted before the change. */
  readonly earlierPhoneEntries: readonly Uint8Array[];
}

export interface KeyFile {
  readonly name: 'audit' | 'encryption';
  readonly setting: 'AUDIT_KEY_FILE' | 'ENCRYPTION_KEY_FILE';
  readonly file: string;
  /** What is lost with it, in words. */
  readonly without: string;
}

export type NamedKeyFiles = Readonly<Record<KeyFile['setting'], string | null>>;

const beside = (databaseFile: string, name: KeyFile['name']): string =>
  path.join(`${databaseFile}.keys`, `${name}.key`);

export const keyFiles = (databaseFile: string, named: NamedKeyFiles): readonly KeyFile[] => [
  {
    name: 'audit',
    setting: 'AUDIT_KEY_FILE',
    file: named.AUDIT_KEY_FILE ?? beside(databaseFile, 'audit'),
    without: 'the audit cannot be verified and invitations do not work',
  },
  {
    name: 'encryption',
    setting: 'ENCRYPTION_KEY_FILE',
    file: named.ENCRYPTION_KEY_FILE ?? beside(databaseFile, 'encryption'),
    without: 'what phones have encrypted cannot be opened and one-time codes do not work',
  },
];

const wayOut = ({ setting, without }: KeyFile): string =>
  `Put the right key back from your copy of it, or name its file with ${setting}. Without it ${without}. A new key is made only for an empty file.`;

/** Why the keys there are do not open this file; empty when they do. */
const problemsOf = (store: Store, files: readonly KeyFile[]): readonly string[] => {
  const noted = fingerprintsIn(store);
  return files.flatMap((one) => {
    if (!existsSync(one.file)) {
      return [
        `The key file ${one.file} is missing, and ${store.file} holds records made with it. ${wayOut(one)}`,
      ];
    }
    const expected = noted.get(one.name);
    return expected && expected !== fingerprintOf(one.name, keyFrom(one.file))
      ? [`The key in ${one.file} is not the one ${store.file} was made with. ${wayOut(one)}`]
      : [];
  });
};

/** The same for whoever only looks; a file without records needs no keys yet. */
export const keyProblems = (store: Store, named: NamedKeyFiles): readonly string[] =>
  isPopulated(store) ? problemsOf(store, keyFiles(store.file, named)) : [];

// One file, several uses: each use gets a key of its own, derived under its name.
export const signInKey = (encryption: Uint8Array): string =>
  createHmac('sha256', encryption).update('sign-in cookies').digest('hex');
const phoneEntriesSecret = (encryption: Uint8Array): Uint8Array =>
  createHmac('sha256', encryption).update('phone entries').digest();

const earlierName = (file: string, count: number): string =>
  path.join(path.dirname(file), `${path.basename(file, '.key')}.earlier-${count}.key`);

/** Files of the keys before this one, newest first. */
const earlierOf = (file: string): readonly string[] => {
  const all: string[] = [];
  while (existsSync(earlierName(file, all.length + 1))) all.push(earlierName(file, all.length + 1));
  return all.reverse();
};

/** Where the next key stands until the file has been written anew with it. */
export const nextKeyFile = (file: string): string => `${file}.next`;

/**
 * Throws when the file says that another audit key is its own by now. A command that only reads keeps nobody from
 * changing it meanwhile, and a row sealed with the one before would break the chain.
 */
export const requireAuditKey = (store: Store, key: Uint8Array): void => {
  if (fingerprintsIn(store).get('audit') !== fingerprintOf('audit', key))
    throw new CannotGoOn('The audit key of this file was changed while this ran. Run it again.');
};

/** Gives the next key its place, and the one before another name, once the file says that it is the file's own. */
export const finishChange = (store: Store, { name, file }: KeyFile): void => {
  const next = nextKeyFile(file);
  if (!existsSync(next) || fingerprintsIn(store).get(name) !== fingerprintOf(name, keyFrom(next))) return;
  if (existsSync(file)) renameSync(file, earlierName(file, earlierOf(file).length + 1));
  renameSync(next, file);
};

/** A key with those before it, from the first on. */
const allOf = (file: string): readonly Uint8Array[] => [...[...earlierOf(file)].reverse(), file].map(keyFrom);

/** The audit keys of a file that is only looked at. Throws the reason when there is none, or it is not the file's own. */
export const auditKeysFor = (store: Store, named: NamedKeyFiles): readonly Uint8Array[] => {
  const files = keyFiles(store.file, named).filter(({ name }) => name === 'audit');
  const [problem] = problemsOf(store, files);
  if (problem) throw new CannotGoOn(problem, 2);
  return allOf(files[0]!.file);
};

/** The keys of a file, beside it unless named. Throws the reason when it holds records and they are not its own. */
export const keysFor = (store: Store, named: NamedKeyFiles): Keys => {
  const files = keyFiles(store.file, named);
  if (isPopulated(store)) {
    for (const one of files) finishChange(store, one);
    const problems = problemsOf(store, files);
    if (problems.length > 0) throw new CannotGoOn(problems.join('\n'));
  }
  for (const { file } of files) if (!existsSync(file)) makeKey(file);
  const [audit, encryption] = files.map(({ file }) => keyFrom(file)) as [Uint8Array, Uint8Array];
  const earlier = earlierOf(files[1]!.file).map(keyFrom);
  return {
    ...{
      audit,
      auditKeys: allOf(files[0]!.file),
      signIn: signInKey(encryption),
      phoneEntries: phoneEntriesSecret(encryption),
    },
    earlierPhoneEntries: earlier.map(phoneEntriesSecret),
  };
};

/** The keys that a file not yet there will be opened with. Throws when one is missing: a backup holds none. */
export const keysForRestored = (databaseFile: string, named: NamedKeyFiles) => {
  const files = keyFiles(databaseFile, named);
  const missing = files.filter(({ file }) => !existsSync(file)).map(({ file }) => file);
  if (missing.length > 0) {
    throw new CannotGoOn(
      `A backup holds no keys. Put your copies of them where the restored file will look for them, ${missing.join(' and ')}, or name their files with AUDIT_KEY_FILE and ENCRYPTION_KEY_FILE.`,
      2,
    );
  }
  const keys = files.map(({ name, file }) => [name, keyFrom(file)] as const);
  return {
    auditKeys: allOf(files.find(({ name }) => name === 'audit')!.file),
    fingerprints: Object.fromEntries(keys.map(([name, key]) => [name, fingerprintOf(name, key)])),
  };
};

/** Notes in the file which keys it is made with; once its schema is there, and before anything else is written. */
export const noteKeys = (store: Store, named: NamedKeyFiles): void => {
  const files = keyFiles(store.file, named);
  noteFingerprints(store, new Map(files.map(({ name, file }) => [name, fingerprintOf(name, keyFrom(file))])));
};

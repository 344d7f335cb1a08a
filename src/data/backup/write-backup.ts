/**
 * A backup of the running file. It is written under another name and gets its own only when it is whole and on
 * the disk: one cut short by a crash is never taken for one. With it go what verifies it: the heads of the audit
 * kept so far, audit rows moved out of the file, and a sealed manifest. Keys do not: they are kept apart.
 */
import {
  chmodSync,
  closeSync,
  copyFileSync,
  cpSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { archiveFolderOf } from '../audit/audit-archive.ts';
import { headsFileOf } from '../audit/audit-heads.ts';
import { findingsInFile } from '../database/file-check.mjs';
import type { Store } from '../database/store.ts';
import { encryptedWith, encryptFiles } from './encrypted-file.ts';
import { contentsOf, manifestFileOf, sealedManifest, sha256Of } from './manifest.ts';

/** What a backup is called until it is whole. */
const unfinished = '.unfinished';

export const sync = (place: string): void => {
  const handle = openSync(place, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};

/** Written with an end to its name; renamed only when it is on the disk. */
export const finish = (target: string): void => {
  const written = `${target}${unfinished}`;
  if (statSync(written).isDirectory())
    for (const name of readdirSync(written)) sync(path.join(written, name));
  sync(written);
  renameSync(written, target);
};

/** "2026-03-02T09-00-00-000Z": sorts by time, and is a file name everywhere. */
const timeShape = '\\d{4}-\\d\\d-\\d\\dT\\d\\d-\\d\\d-\\d\\d-\\d{3}Z';

/** Whether a name is one that a backup gives itself, with what may follow; somebody else's file is none of ours. */
const isOwnName = (file: string, name: string, end: string): boolean =>
  file.startsWith(`${name}-`) && new RegExp(`^${timeShape}${end}$`).test(file.slice(name.length + 1));

const left = new RegExp(
  `^(.+)-${timeShape}\\.(sqlite(\\.[a-z.-]+)?|encrypted|parts)\\.unfinished(-journal)?$`,
);

/** What backups that were ended half-way have left in a folder, each with the name it was to have. */
const leftIn = (folder: string): readonly { readonly name: string; readonly place: string }[] =>
  readdirSync(folder).flatMap((one) => {
    const [, name] = left.exec(one) ?? [];
    return name === undefined ? [] : [{ name, place: path.join(folder, one) }];
  });

/** What others have left and nobody takes away by itself: another program may be writing it now. */
export const halfWrittenIn = (folder: string): readonly string[] =>
  existsSync(folder) ? leftIn(folder).map(({ place }) => place) : [];

const removeUnfinished = (folder: string, isOwn: (name: string) => boolean): void => {
  for (const { name, place } of leftIn(folder)) if (isOwn(name)) rmSync(place, { recursive: true });
};

const timeInName = (at: number): string => new Date(at).toISOString().replace(/[:.]/g, '-');

const copyPages = (store: Store, copy: string): void => {
  // Made here first, so that nobody else may read it.
  closeSync(openSync(copy, 'wx', 0o600));
  store.writer.client.prepare('VACUUM INTO ?').run(copy);
  sync(copy);
  const { damage } = findingsInFile(copy);
  if (damage.length > 0) throw new Error(`The backup is not whole: ${damage[0]}.`);
};

const copyBeside = (from: string, target: string): void => {
  if (!existsSync(from)) return;
  if (statSync(from).isDirectory()) {
    cpSync(from, `${target}${unfinished}`, { recursive: true });
    chmodSync(`${target}${unfinished}`, 0o700);
  } else copyFileSync(from, `${target}${unfinished}`);
};

export interface BackupPlace {
  readonly folder: string;
  /** First part of its name; the time follows. */
  readonly name: string;
  /** Names of earlier ones whose leavings go as well; without it those of the same name. */
  readonly isOwn?: (name: string) => boolean;
  readonly at: number;
}

/** Answers where the backup stands. Others may write to the file meanwhile: it is as of one moment. */
export const writeBackup = (
  store: Store,
  auditKey: Uint8Array,
  { folder, name, at, isOwn = (one) => one === name }: BackupPlace,
): string => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  removeUnfinished(folder, isOwn);
  const target = path.join(folder, `${name}-${timeInName(at)}.sqlite`);
  const copy = `${target}${unfinished}`;
  // Heads first and moved rows last: a head must not be newer than the copy, and no moved row be in neither.
  copyBeside(headsFileOf(store.file), headsFileOf(target));
  copyPages(store, copy);
  copyBeside(archiveFolderOf(store.file), archiveFolderOf(target));
  const bytes = statSync(copy).size;
  const manifest = {
    format: 1 as const,
    madeAt: new Date(at).toISOString(),
    ...{ bytes, sha256: sha256Of(copy) },
    ...contentsOf(copy),
  };
  writeFileSync(`${manifestFileOf(target)}${unfinished}`, sealedManifest(auditKey, manifest), {
    mode: 0o600,
  });
  for (const one of [headsFileOf(target), archiveFolderOf(target), manifestFileOf(target), target]) {
    if (existsSync(`${one}${unfinished}`)) finish(one);
  }
  sync(folder);
  return target;
};

const partsOfBackup = (backup: string): readonly string[] => [
  backup,
  manifestFileOf(backup),
  headsFileOf(backup),
  archiveFolderOf(backup),
];

/** Names of all files a backup consists of, below its folder. */
const filesOf = (backup: string): readonly string[] =>
  partsOfBackup(backup)
    .filter((part) => existsSync(part))
    .flatMap((part) =>
      statSync(part).isDirectory() ? readdirSync(part).map((one) => path.join(part, one)) : [part],
    )
    .map((part) => path.relative(path.dirname(backup), part));

/**
 * The same as one file, encrypted under a key of its own. The parts are made beside the database, where they stand
 * in the clear as it does; nothing but the encrypted file is ever written to the folder.
 */
export const writeEncryptedBackup = (
  store: Store,
  { auditKey, backupKey }: { readonly auditKey: Uint8Array; readonly backupKey: Uint8Array },
  { folder, name, at }: BackupPlace,
): string => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  removeUnfinished(folder, (one) => one === name);
  const here = path.dirname(store.file);
  const ownName = `${path.basename(store.file)}-backup`;
  removeUnfinished(here, (one) => one === ownName);
  const parts = path.join(here, `${ownName}-${timeInName(at)}.parts${unfinished}`);
  const target = path.join(folder, `${name}-${timeInName(at)}.encrypted`);
  try {
    const backup = writeBackup(store, auditKey, { folder: parts, name, at });
    encryptFiles(parts, filesOf(backup), `${target}${unfinished}`, backupKey);
    finish(target);
    sync(folder);
    return target;
  } finally {
    rmSync(parts, { recursive: true, force: true });
  }
};

/** Whether there is anything to back up in a file. */
export const isWritten = (file: string): boolean => existsSync(file) && statSync(file).size > 0;

const isFinished = (file: string): boolean =>
  file.endsWith('.encrypted') ? encryptedWith(file) !== null : existsSync(manifestFileOf(file));

/** Backups of one name in a folder, oldest first: what is called so and is one. */
export const backupsIn = (folder: string, name: string): readonly string[] =>
  readdirSync(folder)
    .filter((one) => isOwnName(one, name, '\\.(sqlite|encrypted)'))
    .sort()
    .map((one) => path.join(folder, one))
    .filter(isFinished);

/** Takes away the oldest until `keep` are left; the file first, so that what remains of one is never taken for it. */
export const keepNewest = (folder: string, name: string, keep: number): readonly string[] => {
  const all = backupsIn(folder, name);
  const old = all.slice(0, Math.max(0, all.length - keep));
  for (const one of old)
    for (const part of partsOfBackup(one)) rmSync(part, { recursive: true, force: true });
  return old;
};

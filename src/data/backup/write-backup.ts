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

/** What an earlier one that was ended half-way has left. */
const removeUnfinished = (folder: string): void => {
  for (const name of readdirSync(folder)) {
    if (name.includes(unfinished)) rmSync(path.join(folder, name), { recursive: true });
  }
};

/** "2026-03-02T09-00-00-000Z": sorts by time, and is a file name everywhere. */
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
  readonly at: number;
}

/** Answers where the backup stands. Others may write to the file meanwhile: it is as of one moment. */
export const writeBackup = (
  store: Store,
  auditKey: Uint8Array,
  { folder, name, at }: BackupPlace,
): string => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  removeUnfinished(folder);
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

/** Whether there is anything to back up in a file. */
export const isWritten = (file: string): boolean => existsSync(file) && statSync(file).size > 0;

/** Backups of one name in a folder, oldest first. */
export const backupsIn = (folder: string, name: string): readonly string[] =>
  readdirSync(folder)
    .filter((one) => one.startsWith(`${name}-`) && one.endsWith('.sqlite'))
    .sort()
    .map((one) => path.join(folder, one));

/** Takes away the oldest until `keep` are left; the file first, so that what remains of one is never taken for it. */
export const keepNewest = (folder: string, name: string, keep: number): readonly string[] => {
  const all = backupsIn(folder, name);
  const old = all.slice(0, Math.max(0, all.length - keep));
  for (const one of old) {
    for (const part of [one, manifestFileOf(one), headsFileOf(one), archiveFolderOf(one)])
      rmSync(part, { recursive: true, force: true });
  }
  return old;
};

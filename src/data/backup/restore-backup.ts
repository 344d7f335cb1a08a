/** A backup put into a fresh place: what arrives is compared with what was backed up before it gets its name. */
import { chmodSync, copyFileSync, cpSync, existsSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';
import { archiveFolderOf } from '../audit/audit-archive.ts';
import { headsFileOf } from '../audit/audit-heads.ts';
import { findingsInFile } from '../database/file-check.mjs';
import { contentsOf, type Manifest, sha256Of } from './manifest.ts';
import { finish, sync } from './write-backup.ts';

const unfinished = '.unfinished';

/** Where a restored file stands until it has proved itself. */
export const unprovenFile = (target: string): string => `${target}${unfinished}`;

const partsOf = (file: string): readonly string[] => [
  ...['', '-wal', '-shm'].map((end) => `${file}${end}`),
  headsFileOf(file),
  archiveFolderOf(file),
];

/** What stands where a file is to be restored to; empty for a fresh place. */
export const inTheWay = (target: string): readonly string[] =>
  partsOf(target).filter((one) => existsSync(one));

export const removeUnproven = (target: string): void => {
  for (const one of partsOf(unprovenFile(target))) rmSync(one, { recursive: true, force: true });
};

/** Copies a backup with what belongs to it, under the name it has until it is proven. */
export const copyBackup = (backup: string, target: string): void => {
  removeUnproven(target);
  const file = unprovenFile(target);
  copyFileSync(backup, file);
  chmodSync(file, 0o600);
  if (existsSync(headsFileOf(backup))) copyFileSync(headsFileOf(backup), headsFileOf(file));
  if (existsSync(archiveFolderOf(backup))) {
    cpSync(archiveFolderOf(backup), archiveFolderOf(file), { recursive: true });
  }
  sync(file);
};

const differing = (what: string, wanted: unknown, found: unknown): readonly string[] =>
  JSON.stringify(wanted) === JSON.stringify(found)
    ? []
    : [`${what}: ${JSON.stringify(wanted)} were backed up, ${JSON.stringify(found)} arrived`];

/** How a copy differs from what its manifest says, in words; empty when it does not. */
export const differencesFrom = (manifest: Manifest, file: string): readonly string[] => {
  const bytes = [
    ...differing('bytes', manifest.bytes, statSync(file).size),
    ...differing('sha256', manifest.sha256, sha256Of(file)),
  ];
  if (bytes.length > 0) return bytes;
  const { damage } = findingsInFile(file);
  if (damage.length > 0) return damage;
  const { rows, chains, keys, step } = contentsOf(file);
  const tables = [...new Set([...Object.keys(manifest.rows), ...Object.keys(rows)])].sort();
  return [
    ...tables.flatMap((table) => differing(`rows of ${table}`, manifest.rows[table], rows[table])),
    ...differing('ends of the audit chains', manifest.chains, chains),
    ...differing('keys', manifest.keys, keys),
    ...differing('step of the schema', manifest.step, step),
  ];
};

/** Gives a proven copy its name; the file itself last. */
export const settle = (target: string): void => {
  const file = unprovenFile(target);
  for (const [from, to] of [
    [headsFileOf(file), headsFileOf(target)],
    [archiveFolderOf(file), archiveFolderOf(target)],
  ] as const) {
    if (!existsSync(from)) continue;
    if (statSync(from).isDirectory()) cpSync(from, to, { recursive: true });
    else copyFileSync(from, to);
    rmSync(from, { recursive: true });
  }
  finish(target);
  sync(path.dirname(target));
};

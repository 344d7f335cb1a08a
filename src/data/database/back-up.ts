/**
 * A copy of the file before its schema moves on. It is written under another name and gets its own only
 * when it is whole and on the disk: a copy cut short by a crash is never taken for one.
 */
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import path from 'node:path';
import Client from 'libsql';
import { headsFileOf } from '../audit/audit-heads.ts';
import type { Store } from './store.ts';

/** What a copy is called until it is whole. */
const unfinished = '.unfinished';

const sync = (place: string): void => {
  const handle = openSync(place, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};

const requireWhole = (file: string): void => {
  const copy = new Client(file);
  try {
    const [answer] = copy.pragma('integrity_check') as readonly { readonly integrity_check: string }[];
    if (answer?.integrity_check === 'ok') return;
    throw new Error(`The copy made before the upgrade is not whole: ${answer?.integrity_check}.`);
  } finally {
    copy.close();
  }
};

/** Renamed only when it is on the disk under its first name. */
const finish = (target: string): void => {
  sync(`${target}${unfinished}`);
  renameSync(`${target}${unfinished}`, target);
};

const removeUnfinished = (folder: string): void => {
  for (const name of readdirSync(folder)) {
    if (name.includes(unfinished)) rmSync(path.join(folder, name));
  }
};

/** "2026-03-02T09-00-00-000Z": sorts by time, and is a file name everywhere. */
const timeInName = (at: number): string => new Date(at).toISOString().replace(/[:.]/g, '-');

/** Answers where the copy stands; null when there is nothing to copy. `step` is the first one to come. */
export const backUp = (store: Store, step: number, at: number): string | null => {
  if (!existsSync(store.file) || statSync(store.file).size === 0) return null;
  const folder = `${store.file}.backups`;
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  removeUnfinished(folder);
  const target = path.join(folder, `before-${step}-at-${timeInName(at)}.sqlite`);
  store.writer.client.prepare('VACUUM INTO ?').run(`${target}${unfinished}`);
  requireWhole(`${target}${unfinished}`);
  // The heads kept so far go with the copy, so that it can be verified by itself.
  const heads = headsFileOf(store.file);
  if (existsSync(heads)) {
    copyFileSync(heads, `${headsFileOf(target)}${unfinished}`);
    finish(headsFileOf(target));
  }
  finish(target);
  sync(folder);
  return target;
};

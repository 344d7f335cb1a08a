/** Whether this process can do its work now: not whether it runs, but whether what is typed will be kept. */
import { statfsSync } from 'node:fs';
import path from 'node:path';
import { isAuditFailing } from '#data/audit/audit.ts';
import { proveWrite } from '#data/database/key-fingerprints.ts';
import { pendingMigrations } from '#data/database/migrate.ts';
import { headsState } from '../jobs/audit-anchoring.ts';
import { keyProblems } from '../keys.ts';
import { type Runtime, runtime } from '../runtime.ts';

/** A commit this young shows that the file can be written to; without one it is tried. */
const youngCommitMs = 15_000;
/** A monitoring program does not wait longer; the try itself goes on. */
const longestTryMs = 2000;
/** Common practice, no source: room for some days of a clinic's entries. */
const leastFreeBytes = 100 * 1024 * 1024;
/** Heads are kept every hour. */
const oldestHeadsMs = 2.5 * 3_600_000;

/** Whether the disk a file stands on has less room left than `least` bytes. */
export const isFull = (file: string, least = leastFreeBytes): boolean => {
  const { bavail, bsize } = statfsSync(path.dirname(path.resolve(file)));
  return bavail * bsize < least;
};

const canSave = async ({ store }: Runtime): Promise<boolean> => {
  const { committedAt, isFailing } = store.health;
  if (!isFailing && committedAt !== null && Date.now() - committedAt < youngCommitMs) return true;
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(false), longestTryMs);
  });
  const tried = proveWrite(store).then(
    () => true,
    () => false,
  );
  return Promise.race([tried, late]).finally(() => clearTimeout(timer));
};

const hasOldHeads = (at: Runtime): boolean => {
  const { keptAt } = headsState(at.store);
  return at.settings.JOBS && keptAt !== null && Date.now() - keptAt > oldestHeadsMs;
};

/** What is wrong, in a few words for an operator; null when all is well. */
export const readiness = async (at: Runtime = runtime()): Promise<string | null> => {
  try {
    at.store.reader.client.prepare('SELECT 1').get();
    if (pendingMigrations(at.store, path.join(process.cwd(), 'drizzle')) > 0) return 'schema is behind';
    // First: on a full disk a small write may still find its place, and the next one not.
    if (isFull(at.store.file)) return 'the disk is nearly full';
    if (!(await canSave(at))) return 'nothing can be saved';
    if (isAuditFailing(at.store)) return 'the audit cannot be written';
    if (keyProblems(at.store, at.settings).length > 0) return 'a key file is missing or another one';
    return hasOldHeads(at) ? 'audit heads are not kept' : null;
  } catch {
    return 'store does not answer';
  }
};

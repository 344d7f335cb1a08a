/**
 * Heads of the audit chains in a file beside the database, one line each, only ever added to. Rows
 * cut off the end of a chain leave no trace in the chain itself; a head kept earlier shows it. Each
 * line is sealed over the one before it, so that a line taken out of the middle shows as well.
 */
import { createHmac } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import type { Store } from '../database/store.ts';
import { type AuditKeys, keysIn } from './seal.ts';
import { type ChainHead, chainHead } from './verify-chain.ts';

interface StoredHead extends ChainHead {
  /** Instant it was kept, epoch milliseconds, by the system clock. */
  readonly at: number;
}

export type Heads =
  | { readonly ok: true; readonly heads: readonly StoredHead[]; readonly lastSeal: string }
  | { readonly ok: false; readonly line: number };

export const headsFileOf = (databaseFile: string): string => `${databaseFile}.audit-heads`;

const firstSeal = '0'.repeat(64);

const lineSeal = (key: Uint8Array, head: StoredHead, previous: string): string =>
  createHmac('sha256', key)
    .update(JSON.stringify(['audit-head', head.clinicId, head.sequence, head.seal, head.at, previous]))
    .digest('hex');

const parsed = (line: string): (StoredHead & { readonly lineSeal: string }) | null => {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
};

/** Reads and checks the file; a file that does not exist holds no heads. */
export const readHeads = (file: string, keys: AuditKeys): Heads => {
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : [];
  const heads: StoredHead[] = [];
  let lastSeal = firstSeal;
  let left = keysIn(keys);
  for (const [place, text] of lines.entries()) {
    const line = parsed(text);
    // Once a later key has sealed a line, an earlier one seals none any more.
    left = line ? left.slice(left.findIndex((key) => lineSeal(key, line, lastSeal) === line.lineSeal)) : [];
    const [key] = left;
    if (!line || !key || lineSeal(key, line, lastSeal) !== line.lineSeal)
      return { ok: false, line: place + 1 };
    const { clinicId, sequence, seal, at } = line;
    heads.push({ clinicId, sequence, seal, at });
    lastSeal = line.lineSeal;
  }
  return { ok: true, heads, lastSeal };
};

const append = (file: string, text: string): void => {
  const handle = openSync(file, 'a', 0o600);
  try {
    writeSync(handle, text);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};

/** Adds the head of each clinic's chain that has grown since. Answers how many; a broken file gets none. */
export const storeHeads = async (
  store: Store,
  keys: AuditKeys,
  clinicIds: readonly string[],
  at: number,
): Promise<number> => {
  const file = headsFileOf(store.file);
  const known = readHeads(file, keys);
  const key = keysIn(keys).at(-1)!;
  if (!known.ok) throw new Error(`Line ${known.line} of the audit heads does not hold; run verify-audit.`);
  let { lastSeal } = known;
  let text = '';
  let count = 0;
  for (const clinicId of clinicIds) {
    const head = await chainHead(store, clinicId);
    const last = known.heads.findLast((one) => one.clinicId === clinicId);
    if (!head || head.sequence <= (last?.sequence ?? 0)) continue;
    const kept = { ...head, at };
    lastSeal = lineSeal(key, kept, lastSeal);
    text += `${JSON.stringify({ ...kept, lineSeal: lastSeal })}\n`;
    count += 1;
  }
  if (text) append(file, text);
  return count;
};

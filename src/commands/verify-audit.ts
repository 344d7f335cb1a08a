/**
 * Walks the audit chain of every clinic in the file to its end, names the first rows that do not hold or
 * are missing, and counts them all. Changes nothing. Rows cut off the end show only where a head was kept since: beside
 * the database by the running server, or in a copy named with --heads.
 */
import { existsSync } from 'node:fs';
import { type Heads, headsFileOf, readHeads } from '#data/audit/audit-heads.ts';
import { type Verdict, verifyChain } from '#data/audit/verify-chain.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { clinicIds } from '#data/patients/people.ts';
import { auditKeyFor } from '#server/keys.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const neededFile = (file: string, what: string): string => {
  if (!existsSync(file)) throw new CannotGoOn(`${what} ${file} does not exist.`, 2);
  return file;
};

const namedHeads = (args: readonly string[]): string | null => {
  if (args.length === 0) return null;
  const [flag, file] = args;
  if (flag !== '--heads' || !file || args.length > 2) {
    throw new CannotGoOn('Usage: DATABASE_FILE=… npm run verify-audit [-- --heads FILE]', 2);
  }
  return neededFile(file, 'The file of heads');
};

/** A long chain says how far it is, where a person sees it and a program that reads the result does not. */
const progress = (clinicId: string) => {
  let said = 0;
  return (sequence: number): void => {
    if (sequence - said < 100_000) return;
    said = sequence;
    process.stderr.write(`clinic ${clinicId}: ${sequence} rows …\n`);
  };
};

const archiveInWords = ({ archived, away }: Verdict & { ok: true }): string => {
  if (archived === 0) return '';
  const there = archived - away > 0 ? ` and ${archived - away} archived rows` : '';
  return `${there}${away > 0 ? `; ${away} archived rows are not at hand` : ''}`;
};

const brokenInWords = ({ sequence, finding, more, wrong }: Verdict & { ok: false }): readonly string[] => [
  ...[{ sequence, finding }, ...more].map((one) => `row ${one.sequence}: ${one.finding}`),
  wrong === 1 ? '1 row does not hold or is missing' : `${wrong} rows do not hold or are missing`,
];

const verifyClinic = async (
  store: Store,
  key: Uint8Array,
  clinicId: string,
  { heads }: Heads & { ok: true },
): Promise<boolean> => {
  const verdict = await verifyChain(store, key, clinicId, heads, progress(clinicId));
  const count = heads.filter((head) => head.clinicId === clinicId).length;
  const compared = count > 0 ? `${count} kept heads agree` : 'no head was kept, so a cut end would not show';
  const said = verdict.ok
    ? [`${verdict.rows} rows hold${archiveInWords(verdict)}; ${compared}`]
    : brokenInWords(verdict);
  for (const line of said) console.log(`clinic ${clinicId}: ${line}`);
  return verdict.ok;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const settings = readEnvironment();
  const file = neededFile(settings.DATABASE_FILE, 'The database file');
  const headsFile = namedHeads(args) ?? headsFileOf(file);
  const store = openStore(file);
  let findings = 0;
  try {
    // Another key, or one made on the spot, would call every row changed.
    const key = auditKeyFor(store, settings);
    const heads = readHeads(headsFile, key);
    if (!heads.ok) {
      console.log(`heads: line ${heads.line} of ${headsFile} does not hold`);
      findings += 1;
    }
    const known = heads.ok ? heads : { ok: true as const, heads: [], lastSeal: '' };
    for (const clinicId of await clinicIds(store)) {
      findings += (await verifyClinic(store, key, clinicId, known)) ? 0 : 1;
    }
  } finally {
    store.close();
  }
  return findings > 0 ? 1 : 0;
};

/**
 * Verifies a file from its pages to its history: whether it is whole, whether the triggers stand, the audit chain
 * of every clinic that ever had one to its end, and each row of the record against the digest the audit holds of
 * it. Whatever does not hold is named, the first of each kind, and the rest looked at all the same. Changes
 * nothing. Rows cut off the end show only where a head was kept since: beside the database by the running server,
 * or in a copy named with --heads.
 */
import { existsSync } from 'node:fs';
import { type Heads, headsFileOf, readHeads } from '#data/audit/audit-heads.ts';
import { knownChains } from '#data/audit/chains-known.ts';
import { type AuditKeys, handOver, keysIn } from '#data/audit/seal.ts';
import { type Verdict, verifyChain } from '#data/audit/verify-chain.ts';
import { type RowsVerdict, verifyRows } from '#data/audit/verify-rows.ts';
import { triggerFindings } from '#data/audit/verify-triggers.ts';
import { findingsInFile } from '#data/database/file-check.mjs';
import { fingerprintOf } from '#data/database/key-fingerprints.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { auditKeysFor } from '#server/keys.ts';
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
  keys: AuditKeys,
  clinicId: string,
  { heads }: Heads & { ok: true },
): Promise<boolean> => {
  const verdict = await verifyChain(store, keys, clinicId, heads, progress(clinicId));
  const count = heads.filter((head) => head.clinicId === clinicId).length;
  const compared = count > 0 ? `${count} kept heads agree` : 'no head was kept, so a cut end would not show';
  const said = verdict.ok
    ? [`${verdict.rows} rows hold${archiveInWords(verdict)}; ${compared}`]
    : brokenInWords(verdict);
  for (const line of said) console.log(`clinic ${clinicId}: ${line}`);
  return verdict.ok;
};

const rowsInWords = ({ rows, findings, wrong, unknown }: RowsVerdict): readonly string[] => {
  const away = unknown > 0 ? `; of ${unknown} nothing is known, their audit rows are archived and away` : '';
  const count = wrong === 1 ? '1 difference' : `${wrong} differences`;
  return [
    ...findings.map((finding) => `records: ${finding}`),
    `records: ${rows} rows are as they were written${away}${wrong > 0 ? `; ${count} in all` : ''}`,
  ];
};

/** Lines of one kind, each a finding. */
const tell = (about: string, findings: readonly string[]): number => {
  for (const finding of findings) console.log(`${about}: ${finding}`);
  return findings.length;
};

/** Without an earlier key each row of its time would seem changed: that it is away is said beside it. */
const keysAway = (store: Store, keys: AuditKeys): readonly string[] => {
  const here = new Set(keysIn(keys).map((key) => fingerprintOf('audit', key)));
  const asked = 'SELECT DISTINCT detail FROM audit WHERE subject = ?';
  const rows = store.reader.client.prepare(asked).all(handOver) as { readonly detail: string }[];
  return rows
    .map(({ detail }) => (JSON.parse(detail) as { readonly from: string }).from)
    .filter((fingerprint) => !here.has(fingerprint))
    .map(
      (fingerprint) =>
        `the audit key used before (${fingerprint}) is not at hand: put its file back beside the present one, under the name it had`,
    );
};

/** Every chain and every row; answers how many findings it has told. */
export const verifyHistory = async (store: Store, keys: AuditKeys, headsFile: string): Promise<number> => {
  const heads = readHeads(headsFile, keys);
  const broken = heads.ok ? [] : [`line ${heads.line} of ${headsFile} does not hold`];
  let findings = tell('keys', keysAway(store, keys)) + tell('heads', broken);
  const known = heads.ok ? heads : { ok: true as const, heads: [], lastSeal: '' };
  const { clinicIds, withoutClinic } = await knownChains(store, known.heads);
  for (const clinicId of clinicIds) {
    findings += (await verifyClinic(store, keys, clinicId, known)) ? 0 : 1;
    if (withoutClinic.includes(clinicId)) {
      findings += tell(`clinic ${clinicId}`, ['the clinic’s own row is gone, and there was an audit of it']);
    }
  }
  const rows = await verifyRows(store, keys, clinicIds);
  for (const line of rowsInWords(rows)) console.log(line);
  return findings + rows.wrong;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const settings = readEnvironment();
  const file = neededFile(settings.DATABASE_FILE, 'The database file');
  const headsFile = namedHeads(args) ?? headsFileOf(file);
  const { damage, strays } = findingsInFile(file);
  const inFile = tell('file', [...damage, ...strays]);
  if (damage.length > 0) {
    console.log('the history was not read: the file is damaged. Restore a backup and verify that one.');
    return 1;
  }
  const store = openStore(file);
  try {
    // Another key, or one made on the spot, would call every row changed.
    const keys = auditKeysFor(store, settings);
    const triggers = tell('triggers', triggerFindings(store));
    return inFile + triggers + (await verifyHistory(store, keys, headsFile)) > 0 ? 1 : 0;
  } finally {
    store.close();
  }
};

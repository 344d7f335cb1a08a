/**
 * Verifies the certificate of a decision: its rules by the independent table, which shares no code with the engine,
 * and again by the engine; its settings by their digest; its row by the audit. Exit 0 where all of it holds, 1 where
 * something does not, 3 where nothing is wrong and something could not be looked at.
 */
import { existsSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { AuditKeys } from '#data/audit/seal.ts';
import type { Store } from '#data/database/store.ts';
import { type Certificate, sealInChain } from '#data/decision/certificate/certificate.ts';
import { type CertificateVerdict, verifyCertificate } from '#data/decision/certificate/verify-certificate.ts';
import { openStore } from '#data/open-store.ts';
import { auditKeysFor } from '#server/keys.ts';
import { readCertificate } from './certificates/read-certificate.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const usage = `Usage: DATABASE_FILE=… npm run --silent verify-certificate -- --file FILE
       npm run --silent verify-certificate -- --file FILE --without-key   where the clinic's key is not at hand`;

interface Asked {
  readonly file: string;
  readonly withoutKey: boolean;
}

const askedIn = (args: readonly string[]): Asked => {
  const options = { file: { type: 'string' }, 'without-key': { type: 'boolean' } } as const;
  try {
    const { file, 'without-key': withoutKey = false } = parseArgs({ args: [...args], options }).values;
    if (file) return { file, withoutKey };
  } catch {
    // Said below, as where none is named.
  }
  throw new CannotGoOn(usage, 2);
};

const certificateIn = (file: string): Certificate => {
  if (!existsSync(file)) throw new CannotGoOn(`The file ${file} does not exist.`, 2);
  const read = readCertificate(readFileSync(file, 'utf8'));
  if (typeof read === 'string') throw new CannotGoOn(`${file} is no certificate of a decision: ${read}`, 1);
  return read;
};

/** Whether the chain of this file goes by the same row; rows of many years ago may have been moved away. */
const placeInChain = async (store: Store, { audit: row }: Certificate): Promise<readonly string[]> => {
  const seal = await sealInChain(store, row);
  if (seal === null) console.log(`chain: row ${row.sequence} is not in this file; it may have been archived`);
  else if (seal === row.seal) console.log(`chain: row ${row.sequence} of this file is the same`);
  return seal === null || seal === row.seal
    ? []
    : [`row ${row.sequence} of the chain of this file is another`];
};

const tableInWords = ({ table }: CertificateVerdict): string =>
  table.says === 'the-same'
    ? `table: the independent table, version ${table.table}, says the same from these facts`
    : table.says === 'nothing'
      ? `table: not looked at, since ${table.reason}`
      : 'table: it says otherwise';

const engineInWords = ({ engine }: CertificateVerdict): string =>
  engine.outcome === 'same'
    ? 'engine: decided again by this release it comes out the same'
    : engine.outcome === 'different'
      ? 'engine: decided again it comes out otherwise'
      : `engine: not looked at, since ${engine.reason}`;

const tell = (certificate: Certificate, verdict: CertificateVerdict): void => {
  const { id, joint, day, engineVersion, settingsId, decision } = certificate.decision;
  console.log(`decision ${id}: ${joint}, ${day}, ${decision}, version ${engineVersion} of the rules`);
  console.log(`settings ${settingsId}`);
  console.log(tableInWords(verdict));
  console.log(engineInWords(verdict));
  if (verdict.seal === 'holds') console.log('seal: the row is as the audit says it was written');
  if (verdict.seal === 'not-looked-at') console.log('seal: not looked at, since the key is not at hand');
};

const isWhole = ({ table, engine, seal }: CertificateVerdict): boolean =>
  table.says === 'the-same' && engine.outcome === 'same' && seal === 'holds';

const ended = (verdict: CertificateVerdict, beside: readonly string[]): number => {
  const findings = [...verdict.findings, ...beside];
  for (const finding of findings) console.log(`wrong: ${finding}`);
  if (findings.length > 0) return 1;
  return isWhole(verdict) ? 0 : 3;
};

const withKeys = async (certificate: Certificate): Promise<number> => {
  const settings = readEnvironment();
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const store = openStore(file);
  try {
    const keys: AuditKeys = auditKeysFor(store, settings);
    const verdict = verifyCertificate(certificate, keys);
    tell(certificate, verdict);
    return ended(verdict, await placeInChain(store, certificate));
  } finally {
    store.close();
  }
};

export const run = async (args: readonly string[]): Promise<number> => {
  const { file, withoutKey } = askedIn(args);
  const certificate = certificateIn(file);
  if (!withoutKey) return withKeys(certificate);
  const verdict = verifyCertificate(certificate, null);
  tell(certificate, verdict);
  return ended(verdict, []);
};

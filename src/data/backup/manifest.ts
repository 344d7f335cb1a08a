/**
 * What a backup says of itself, beside it: its bytes, how many rows each table has, where each audit chain ends
 * and which keys open it. Sealed with the audit key, so that a backup that was changed is not restored as one.
 */
import { createHash, createHmac } from 'node:crypto';
import { closeSync, existsSync, openSync, readFileSync, readSync } from 'node:fs';
import Client from 'libsql';
import { type AuditKeys, keysIn } from '../audit/seal.ts';

interface ChainEnd {
  readonly clinicId: string;
  readonly sequence: number;
  readonly seal: string;
}

export interface Manifest {
  readonly format: 1;
  readonly madeAt: string;
  readonly bytes: number;
  readonly sha256: string;
  /** Newest step of the schema, as the migrations count them. */
  readonly step: number;
  readonly rows: Readonly<Record<string, number>>;
  readonly chains: readonly ChainEnd[];
  /** Fingerprints of the keys the file was made with. */
  readonly keys: Readonly<Record<string, string>>;
}

export const manifestFileOf = (backup: string): string => `${backup}.manifest.json`;

export const sha256Of = (file: string): string => {
  const hash = createHash('sha256');
  const part = Buffer.alloc(1 << 20);
  const handle = openSync(file, 'r');
  try {
    for (let read = readSync(handle, part); read > 0; read = readSync(handle, part)) {
      hash.update(part.subarray(0, read));
    }
  } finally {
    closeSync(handle);
  }
  return hash.digest('hex');
};

type Row = Readonly<Record<string, unknown>>;

/** What is in a file that nobody writes to, for a manifest and to compare with one. */
export const contentsOf = (file: string): Pick<Manifest, 'step' | 'rows' | 'chains' | 'keys'> => {
  const client = new Client(file);
  const all = (sql: string) => client.prepare(sql).all() as Row[];
  try {
    client.pragma('query_only = ON');
    const tables = all(
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
    ).map(({ name }) => String(name));
    const has = (table: string) => tables.includes(table);
    const rows = tables.map((table) => [table, Number(all(`SELECT count(*) AS n FROM "${table}"`)[0]?.n)]);
    const ends =
      'SELECT clinic_id AS clinicId, sequence, seal FROM audit a WHERE sequence = (SELECT max(sequence) FROM audit WHERE clinic_id = a.clinic_id) ORDER BY clinic_id';
    const keys = has('key_fingerprint')
      ? all('SELECT name, fingerprint FROM key_fingerprint ORDER BY name')
      : [];
    const steps = has('__drizzle_migrations')
      ? all('SELECT max(created_at) AS step FROM __drizzle_migrations')
      : [];
    return {
      step: Number(steps[0]?.step ?? 0),
      rows: Object.fromEntries(rows),
      chains: has('audit') ? (all(ends) as unknown as ChainEnd[]) : [],
      keys: Object.fromEntries(keys.map(({ name, fingerprint }) => [name, fingerprint])),
    };
  } finally {
    client.close();
  }
};

const macOf = (auditKey: Uint8Array, manifest: Manifest): string => {
  const own = createHmac('sha256', auditKey).update('manifest of a backup').digest();
  return createHmac('sha256', own).update(JSON.stringify(manifest)).digest('hex');
};

export const sealedManifest = (auditKey: Uint8Array, manifest: Manifest): string =>
  `${JSON.stringify({ manifest, mac: macOf(auditKey, manifest) }, null, 2)}\n`;

/** Keys at hand that are not those the file was made with, in words. */
export const otherKeys = (
  { keys }: Manifest,
  fingerprints: Readonly<Record<string, string>>,
): readonly string[] =>
  Object.keys(keys)
    .filter((name) => keys[name] !== fingerprints[name])
    .map((name) => `the ${name} key is not the one this file was made with`);

/** The manifest of a backup, or why there is none to believe. */
export const readManifest = (
  backup: string,
  auditKeys: AuditKeys,
): { readonly manifest: Manifest } | { readonly problem: string } => {
  const file = manifestFileOf(backup);
  if (!existsSync(file)) return { problem: `${file} is missing: ${backup} is not a finished backup.` };
  try {
    const { manifest, mac } = JSON.parse(readFileSync(file, 'utf8')) as { manifest: Manifest; mac: string };
    const isOurs = keysIn(auditKeys).some((key) => macOf(key, manifest) === mac);
    if (manifest.format === 1 && isOurs) return { manifest };
  } catch {
    // Said below, as for one that is sealed by somebody else.
  }
  return { problem: `${file} was changed, or was not made with this audit key.` };
};

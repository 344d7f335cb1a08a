/** Secrets kept in files of their own, outside the database. Made on first use, readable by the owner only. */
import { createHmac, randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** The key in a file; made when the file is not there. */
export const keyFrom = (file: string): Uint8Array => {
  if (!existsSync(file)) {
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, randomBytes(32).toString('hex'), { mode: 0o600, flag: 'wx' });
  }
  const text = readFileSync(file, 'utf8').trim();
  if (!/^[0-9a-f]{64}$/.test(text)) {
    throw new Error(`${file} must hold 64 hexadecimal digits; it holds something else.`);
  }
  return Buffer.from(text, 'hex');
};

export interface Keys {
  readonly audit: Uint8Array;
  /** Signs session cookies. */
  readonly signIn: string;
  /** From which each clinic's key pair for entries of phones is made. */
  readonly phoneEntries: Uint8Array;
}

/** Keys beside the database unless the environment names files. */
export const keysFor = (
  databaseFile: string,
  named: { audit: string | null; encryption: string | null },
): Keys => {
  const folder = `${databaseFile}.keys`;
  const audit = keyFrom(named.audit ?? path.join(folder, 'audit.key'));
  const encryption = keyFrom(named.encryption ?? path.join(folder, 'encryption.key'));
  // One file, several uses: each use gets a key of its own, derived under its name.
  const signIn = createHmac('sha256', encryption).update('sign-in cookies').digest('hex');
  const phoneEntries = createHmac('sha256', encryption).update('phone entries').digest();
  return { audit, signIn, phoneEntries };
};

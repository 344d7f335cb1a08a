/**
 * Walks the audit chain of every clinic in the file and names the first row that does not hold.
 * Changes nothing. It cannot see that the newest rows of a chain were cut off: that needs heads
 * kept elsewhere.
 */
import { existsSync } from 'node:fs';
import path from 'node:path';
import { verifyChain } from '#data/audit.ts';
import { clinicIds } from '#data/people.ts';
import { openStore } from '#data/store/store.ts';
import { keyFrom } from '#server/keys.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const neededFile = (file: string, what: string): string => {
  if (!existsSync(file)) throw new CannotGoOn(`${what} ${file} does not exist.`, 2);
  return file;
};

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) throw new CannotGoOn('Usage: DATABASE_FILE=… npm run verify-audit', 2);
  const settings = readEnvironment();
  const file = neededFile(settings.DATABASE_FILE, 'The database file');
  // A key made on the spot would call every row changed.
  const keyFile = settings.AUDIT_KEY_FILE ?? path.join(`${file}.keys`, 'audit.key');
  const key = keyFrom(neededFile(keyFile, 'The key file'));
  const store = openStore(file);
  let findings = 0;
  try {
    for (const clinicId of await clinicIds(store)) {
      const verdict = await verifyChain(store, key, clinicId);
      if (verdict.ok) console.log(`clinic ${clinicId}: ${verdict.rows} rows hold`);
      else console.log(`clinic ${clinicId}: row ${verdict.sequence}: ${verdict.finding}`);
      findings += verdict.ok ? 0 : 1;
    }
  } finally {
    store.close();
  }
  return findings > 0 ? 1 : 0;
};

/** Which keys a file was made with, as fingerprints in the file itself. */
import { createHmac } from 'node:crypto';
import { sql } from 'drizzle-orm';
import { keyFingerprint } from '../schema/schema.ts';
import type { Store } from './store.ts';

export const fingerprintOf = (name: string, key: Uint8Array): string =>
  createHmac('sha256', key).update(`fingerprint of the ${name} key`).digest('hex').slice(0, 32);

const hasTable = ({ writer }: Store, name: string): boolean =>
  writer.client.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = ?").get(name) !==
  undefined;

/** Whether anybody's records can be in the file: rows of a clinic, whatever its schema. */
export const isPopulated = (store: Store): boolean =>
  hasTable(store, 'clinic') &&
  store.writer.client.prepare('SELECT 1 FROM clinic LIMIT 1').get() !== undefined;

/** Name of each key to its fingerprint; empty where none was noted. */
export const fingerprintsIn = (store: Store): ReadonlyMap<string, string> => {
  if (!hasTable(store, 'key_fingerprint')) return new Map();
  const rows = store.writer.db.select().from(keyFingerprint).all();
  return new Map(rows.map(({ name, fingerprint }) => [name, fingerprint]));
};

/** A durable write that changes nothing: a row is written as it is, and synced. */
export const proveWrite = (store: Store): Promise<void> =>
  store.write(async (tx) => {
    await tx.update(keyFingerprint).set({ fingerprint: sql`fingerprint` });
  });

/**
 * Notes the keys, before anybody else writes. Written at every start, noted already or not: a file that
 * cannot be written to is found here and not at the first save.
 */
export const noteFingerprints = (store: Store, fingerprints: ReadonlyMap<string, string>): void => {
  for (const [name, fingerprint] of fingerprints) {
    store.writer.db
      .insert(keyFingerprint)
      .values({ name, fingerprint })
      .onConflictDoUpdate({ target: keyFingerprint.name, set: { fingerprint } })
      .run();
  }
};

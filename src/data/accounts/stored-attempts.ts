/**
 * Wrong tries in the file, so that a restart forgives nobody. Counting happens in memory; what has
 * changed waits here until `flushAttempts` writes it. Whose tries they are is sealed: neither an address
 * nor a network stands in the file.
 */
import { createHmac } from 'node:crypto';
import { and, eq, lt } from 'drizzle-orm';
import { perStore } from '../database/per-store.ts';
import type { Store } from '../database/store.ts';
import { signInAttempt } from '../schema/schema.ts';

export interface Count {
  readonly wrong: number;
  readonly lastAt: number;
}

/** Tries older than a day count for nothing any more. */
export const forgottenAfter = 24 * 3_600_000;

export interface StoredAttempts {
  /** The key as it is kept. */
  readonly sealOf: (key: string) => string;
  readonly known: () => readonly (readonly [seal: string, count: Count])[];
  /** null = forgiven. */
  readonly note: (seal: string, count: Count | null) => void;
}

interface Change {
  readonly kind: string;
  readonly seal: string;
  readonly count: Count | null;
}

const changes = perStore('kept-tries', () => new Map<string, Change>());

/** Kept nowhere: for counting that a test looks at, or that may be forgotten. */
export const storedNowhere: StoredAttempts = { sealOf: (key) => key, known: () => [], note: () => undefined };

export const storedAttempts = (store: Store, key: Uint8Array, kind: string): StoredAttempts => ({
  sealOf: (plain) => createHmac('sha256', key).update(`wrong tries ${kind} ${plain}`).digest('base64url'),
  known: () =>
    store.reader.client
      .prepare(
        'SELECT key_digest AS seal, wrong, last_at AS lastAt FROM sign_in_attempt WHERE kind = ? ORDER BY last_at',
      )
      .all(kind)
      .map((row) => {
        const { seal, wrong, lastAt } = row as Count & { readonly seal: string };
        return [seal, { wrong, lastAt }] as const;
      }),
  note: (seal, count) => {
    changes(store).set(`${kind} ${seal}`, { kind, seal, count });
  },
});

/** Writes what has changed. Called before a passphrase or code is looked at, so that a crash gives no free try. */
export const flushAttempts = async (store: Store, now: number): Promise<void> => {
  const waiting = changes(store);
  const batch = [...waiting.values()];
  waiting.clear();
  if (batch.length === 0) return;
  await store.write(async (tx) => {
    await tx.delete(signInAttempt).where(lt(signInAttempt.lastAt, now - forgottenAfter));
    for (const { kind, seal, count } of batch) {
      const own = and(eq(signInAttempt.kind, kind), eq(signInAttempt.keyDigest, seal));
      if (!count) await tx.delete(signInAttempt).where(own);
      else
        await tx
          .insert(signInAttempt)
          .values({ kind, keyDigest: seal, ...count })
          .onConflictDoUpdate({ target: [signInAttempt.kind, signInAttempt.keyDigest], set: count });
    }
  });
};

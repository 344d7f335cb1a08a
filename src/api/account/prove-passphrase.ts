/**
 * The one guard before every check of a passphrase inside an open session. Somebody at an open desk must
 * not try passphrases at leisure; the session itself stays as it is. The key is the session, not the
 * account, so that nobody makes its owner wait elsewhere.
 */
import type { Access } from '#data/access.ts';
import { flushAttempts, storedAttempts } from '#data/accounts/stored-attempts.ts';
import { perStore } from '#data/database/per-store.ts';
import { attemptLimiter } from '../attempt-limiter.ts';

type Proof =
  | { readonly is: 'right' }
  | { readonly is: 'wrong' }
  | { readonly is: 'too-often'; readonly seconds: number };

const proofsOf = perStore('proofs', (store, key: Uint8Array) =>
  attemptLimiter(
    { free: 5, firstWaitSeconds: 15, longestWaitSeconds: 900 },
    storedAttempts(store, key, 'proof'),
  ),
);

/** `check` is run only when the session has not tried too often. */
export const provePassphrase = async (
  { store, auditKey }: Pick<Access, 'store' | 'auditKey'>,
  sessionId: string,
  check: () => Promise<boolean>,
): Promise<Proof> => {
  const now = Date.now();
  const proofs = proofsOf(store, auditKey);
  const seconds = proofs.wait(sessionId, now);
  if (seconds > 0) return { is: 'too-often', seconds };
  // Counted first, so that many at once are still few.
  proofs.wrong(sessionId, now);
  await flushAttempts(store, now);
  if (!(await check())) return { is: 'wrong' };
  proofs.right(sessionId);
  await flushAttempts(store, now);
  return { is: 'right' };
};

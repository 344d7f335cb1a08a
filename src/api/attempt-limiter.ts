/**
 * Wrong tries, counted by a key such as account and network. After some free ones each further try
 * waits twice as long as the one before, up to a bound: a delay ends by itself, so nobody can lock
 * somebody else out for good. Counted in memory and kept in the file, so that a restart forgives nobody.
 */
import {
  type Count,
  forgottenAfter,
  type StoredAttempts,
  storedNowhere,
} from '#data/accounts/stored-attempts.ts';

export interface AttemptRule {
  /** Wrong tries that cost nothing. */
  readonly free: number;
  readonly firstWaitSeconds: number;
  readonly longestWaitSeconds: number;
}

/** Most keys held; the oldest go first, so that a flood of keys cannot fill the memory. */
const mostKeys = 20_000;

export interface AttemptLimiter {
  /** Whole seconds until the next try is looked at; 0 = now. */
  readonly wait: (key: string, now: number) => number;
  readonly wrong: (key: string, now: number) => void;
  readonly right: (key: string) => void;
  /** Takes back one try that was counted before it turned out right; the others stand. */
  readonly undo: (key: string) => void;
}

const waitMs = (rule: AttemptRule, wrong: number): number => {
  const over = wrong - rule.free;
  if (over < 0) return 0;
  return Math.min(rule.firstWaitSeconds * 2 ** Math.min(over, 30), rule.longestWaitSeconds) * 1000;
};

export const attemptLimiter = (rule: AttemptRule, kept: StoredAttempts = storedNowhere): AttemptLimiter => {
  const counts = new Map<string, Count>(kept.known());
  const forget = (seal: string): void => {
    if (counts.delete(seal)) kept.note(seal, null);
  };
  const set = (seal: string, count: Count): void => {
    counts.delete(seal);
    counts.set(seal, count);
    kept.note(seal, count);
    if (counts.size > mostKeys) forget(counts.keys().next().value!);
  };
  const knownAt = (seal: string, now: number): Count | null => {
    const count = counts.get(seal);
    if (!count || now - count.lastAt >= forgottenAfter) return null;
    // A clock that was put back: the wait begins now, or it would last until the old time comes again.
    if (count.lastAt > now) set(seal, { ...count, lastAt: now });
    return counts.get(seal)!;
  };
  return {
    wait: (key, now) => {
      const count = knownAt(kept.sealOf(key), now);
      const ms = count ? waitMs(rule, count.wrong) : 0;
      return count && ms > 0 ? Math.max(0, Math.ceil((count.lastAt + ms - now) / 1000)) : 0;
    },
    wrong: (key, now) => {
      const seal = kept.sealOf(key);
      set(seal, { wrong: (knownAt(seal, now)?.wrong ?? 0) + 1, lastAt: now });
    },
    right: (key) => forget(kept.sealOf(key)),
    undo: (key) => {
      const seal = kept.sealOf(key);
      const count = counts.get(seal);
      if (count && count.wrong > 1) set(seal, { ...count, wrong: count.wrong - 1 });
      else forget(seal);
    },
  };
};

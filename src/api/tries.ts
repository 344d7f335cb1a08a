/**
 * Wrong tries, counted by a key such as account and network. After some free ones each further try
 * waits twice as long as the one before, up to a bound: a delay ends by itself, so nobody can lock
 * somebody else out for good. Kept in memory: a restart forgets, which costs an attacker nothing much.
 */
export interface TriesRule {
  /** Wrong tries that cost nothing. */
  readonly free: number;
  readonly firstWaitSeconds: number;
  readonly longestWaitSeconds: number;
}

interface Count {
  readonly wrong: number;
  readonly lastAt: number;
}

/** Most keys held; the oldest go first, so that a flood of keys cannot fill the memory. */
const mostKeys = 20_000;

/** Wrong tries older than this are forgotten. */
const forgottenAfter = 24 * 3_600_000;

export interface Tries {
  /** Whole seconds until the next try is looked at; 0 = now. */
  readonly wait: (key: string, now: number) => number;
  readonly wrong: (key: string, now: number) => void;
  readonly right: (key: string) => void;
  /** Takes back one try that was counted before it turned out right; the others stand. */
  readonly undo: (key: string) => void;
}

export const countTries = (rule: TriesRule): Tries => {
  const counts = new Map<string, Count>();
  const waitMs = (wrong: number): number => {
    const over = wrong - rule.free;
    if (over < 0) return 0;
    return Math.min(rule.firstWaitSeconds * 2 ** Math.min(over, 30), rule.longestWaitSeconds) * 1000;
  };
  const known = (key: string, now: number): Count | null => {
    const count = counts.get(key);
    return count && now - count.lastAt < forgottenAfter ? count : null;
  };
  return {
    wait: (key, now) => {
      const count = known(key, now);
      const ms = count ? waitMs(count.wrong) : 0;
      // A clock that was put back must not make somebody wait who has nothing to wait for.
      return count && ms > 0 ? Math.max(0, Math.ceil((count.lastAt + ms - now) / 1000)) : 0;
    },
    wrong: (key, now) => {
      const wrong = (known(key, now)?.wrong ?? 0) + 1;
      counts.delete(key);
      counts.set(key, { wrong, lastAt: now });
      if (counts.size > mostKeys) counts.delete(counts.keys().next().value!);
    },
    right: (key) => {
      counts.delete(key);
    },
    undo: (key) => {
      const count = counts.get(key);
      if (count && count.wrong > 1) counts.set(key, { ...count, wrong: count.wrong - 1 });
      else counts.delete(key);
    },
  };
};

/**
 * How often somebody may try to sign in. No account is ever locked. A known browser waits for its
 * own wrong tries only; strangers wait by account and network, by account, and by what their network
 * asks of this machine in all.
 */
import { type AttemptLimiter, attemptLimiter } from '#api/attempt-limiter.ts';
import { type StoredAttempts, storedNowhere } from '#data/accounts/stored-attempts.ts';
import { countMinutes } from '../http/rate.ts';

interface SignInAttempt {
  readonly email: string;
  readonly network: string;
  /** Mark of a browser that has signed in to this account before; null for a stranger. */
  readonly knownMark: string | null;
}

export interface SignInGuard {
  /** Whole seconds to wait; 0 = try now. */
  readonly wait: (attempt: SignInAttempt, now: number) => number;
  readonly wrong: (attempt: SignInAttempt, now: number) => void;
  readonly right: (attempt: SignInAttempt) => void;
}

/** Passphrases a minute that one network of strangers may have checked: each costs a fifth of a second of a core. */
const strangersAMinute = 30;

const browserRule = { free: 5, firstWaitSeconds: 15, longestWaitSeconds: 300 } as const;
const networkRule = { free: 5, firstWaitSeconds: 15, longestWaitSeconds: 900 } as const;
const accountRule = { free: 50, firstWaitSeconds: 5, longestWaitSeconds: 60 } as const;
const codeRule = { free: 10, firstWaitSeconds: 5, longestWaitSeconds: 120 } as const;

/** Where the tries of one kind are kept. */
type StoreAttempts = (kind: string) => StoredAttempts;

export const guardSignIns = (store: StoreAttempts = () => storedNowhere): SignInGuard => {
  const byBrowser: AttemptLimiter = attemptLimiter(browserRule, store('browser'));
  const byNetwork: AttemptLimiter = attemptLimiter(networkRule, store('network'));
  const byAccount: AttemptLimiter = attemptLimiter(accountRule, store('account'));
  const load = countMinutes(strangersAMinute);
  const account = ({ email }: SignInAttempt) => email.toLowerCase();
  const pair = (attempt: SignInAttempt) => `${account(attempt)} ${attempt.network}`;
  const browser = (attempt: SignInAttempt) => `${account(attempt)} ${attempt.knownMark}`;
  return {
    wait: (attempt, now) =>
      attempt.knownMark
        ? byBrowser.wait(browser(attempt), now)
        : Math.max(
            byNetwork.wait(pair(attempt), now),
            byAccount.wait(account(attempt), now),
            load.wait(attempt.network, now),
          ),
    // Counted when it is let in, before it is checked, so that many at once are still few.
    wrong: (attempt, now) => {
      if (attempt.knownMark) return byBrowser.wrong(browser(attempt), now);
      byNetwork.wrong(pair(attempt), now);
      byAccount.wrong(account(attempt), now);
      load.add(attempt.network, now);
    },
    right: (attempt) => {
      if (attempt.knownMark) return byBrowser.right(browser(attempt));
      byNetwork.right(pair(attempt));
      // Others' wrong tries on this account still count.
      byAccount.undo(account(attempt));
    },
  };
};

/** Codes of invitations: few networks ever type one wrong more than some times. */
export const guardCodes = (store: StoreAttempts = () => storedNowhere): AttemptLimiter =>
  attemptLimiter(codeRule, store('invitation'));

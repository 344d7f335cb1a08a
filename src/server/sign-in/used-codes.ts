/**
 * One-time codes already taken: a code looked at over a shoulder opens nothing within its own minute,
 * nor after a restart within it.
 */
import { type Count, type StoredAttempts, storedNowhere } from '#data/accounts/stored-attempts.ts';

/** A code is taken one step early and one late, so it lives for three steps of 30 seconds. */
const codeLivesFor = 90_000;

export interface UsedCodes {
  /** False when the account has used this code a moment ago; the answer and the note are one step. */
  readonly consume: (userId: string, code: string, now: number) => boolean;
  /** The code was not right after all: it may be typed again. */
  readonly giveBack: (userId: string, code: string) => void;
}

export const rememberCodes = (kept: StoredAttempts = storedNowhere, livesFor = codeLivesFor): UsedCodes => {
  const used = new Map<string, Count>(kept.known());
  const sealOf = (userId: string, code: string) => kept.sealOf(`${userId} ${code}`);
  const forget = (seal: string) => {
    if (used.delete(seal)) kept.note(seal, null);
  };
  return {
    consume: (userId, code, now) => {
      for (const [seal, { lastAt }] of used) if (now - lastAt >= livesFor) forget(seal);
      const seal = sealOf(userId, code);
      if (used.has(seal)) return false;
      const count = { wrong: 1, lastAt: now };
      used.set(seal, count);
      kept.note(seal, count);
      return true;
    },
    giveBack: (userId, code) => forget(sealOf(userId, code)),
  };
};

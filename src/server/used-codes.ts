/** One-time codes already taken: a code looked at over a shoulder opens nothing within its own minute. */

/** A code is taken one step early and one late, so it lives for three steps of 30 seconds. */
const livesFor = 90_000;

export interface UsedCodes {
  /** False when the account has used this code a moment ago; the answer and the note are one step. */
  readonly take: (userId: string, code: string, now: number) => boolean;
  /** The code was not right after all: it may be typed again. */
  readonly giveBack: (userId: string, code: string) => void;
}

export const rememberCodes = (): UsedCodes => {
  const used = new Map<string, number>();
  const keyOf = (userId: string, code: string) => `${userId} ${code}`;
  return {
    take: (userId, code, now) => {
      for (const [key, at] of used) if (now - at >= livesFor) used.delete(key);
      const key = keyOf(userId, code);
      if (used.has(key)) return false;
      used.set(key, now);
      return true;
    },
    giveBack: (userId, code) => {
      used.delete(keyOf(userId, code));
    },
  };
};

/** How much one session, or one network of nobody signed in, may ask in a minute. */

interface Minute {
  readonly begun: number;
  readonly count: number;
}

export interface MinuteCount {
  /** Whole seconds to wait; 0 = go on. */
  readonly wait: (key: string, now: number) => number;
  readonly add: (key: string, now: number) => void;
}

export const countMinutes = (most: number): MinuteCount => {
  const minutes = new Map<string, Minute>();
  return {
    wait: (key, now) => {
      const minute = minutes.get(key);
      if (!minute || now - minute.begun >= 60_000 || minute.count < most) return 0;
      return Math.ceil((minute.begun + 60_000 - now) / 1000);
    },
    add: (key, now) => {
      const minute = minutes.get(key);
      const isNew = !minute || now - minute.begun >= 60_000;
      minutes.delete(key);
      minutes.set(key, isNew ? { begun: now, count: 1 } : { ...minute, count: minute.count + 1 });
      if (minutes.size > 20_000) minutes.delete(minutes.keys().next().value!);
    },
  };
};

/** Ten a second: far more than a person at a page, far less than a program that copies records. */
export const sessionMinute = 600;
export const strangerMinute = 300;

const sessions = countMinutes(sessionMinute);
const strangers = countMinutes(strangerMinute);

/** Counts one request and answers the seconds to wait. */
export const askedTooOften = (sessionId: string | null, network: string, now = Date.now()): number => {
  const [count, key] = sessionId ? [sessions, sessionId] : [strangers, network];
  const wait = count.wait(key, now);
  if (wait === 0) count.add(key, now);
  return wait;
};

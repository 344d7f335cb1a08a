/** How many calls one session, or one network of nobody signed in, may make in a minute. */

interface Minute {
  readonly begun: number;
  readonly count: number;
}

export interface MinuteCount {
  /** Whole seconds to wait until `calls` more are let in; 0 = go on. */
  readonly wait: (key: string, now: number, calls?: number) => number;
  readonly add: (key: string, now: number, calls?: number) => void;
}

export const countMinutes = (most: number): MinuteCount => {
  const minutes = new Map<string, Minute>();
  // Either way: a clock that was put back must not make one minute last until the old time comes again.
  const isOver = (minute: Minute, now: number): boolean => Math.abs(now - minute.begun) >= 60_000;
  return {
    wait: (key, now, calls = 1) => {
      const minute = minutes.get(key);
      if (!minute || isOver(minute, now) || minute.count + calls <= most) return 0;
      return Math.ceil((minute.begun + 60_000 - now) / 1000);
    },
    add: (key, now, calls = 1) => {
      const minute = minutes.get(key);
      const isNew = !minute || isOver(minute, now);
      minutes.delete(key);
      minutes.set(key, isNew ? { begun: now, count: calls } : { ...minute, count: minute.count + calls });
      if (minutes.size > 20_000) minutes.delete(minutes.keys().next().value!);
    },
  };
};

/** Ten a second: far more than a person at a page, far less than a program that copies records. */
export const sessionMinute = 600;
export const strangerMinute = 300;

const sessions = countMinutes(sessionMinute);
const strangers = countMinutes(strangerMinute);

/** Counts the calls of one request and answers the seconds to wait. */
export const askedTooOften = (
  sessionId: string | null,
  network: string,
  now = Date.now(),
  calls = 1,
): number => {
  const [count, key] = sessionId ? [sessions, sessionId] : [strangers, network];
  const wait = count.wait(key, now, calls);
  if (wait === 0) count.add(key, now, calls);
  return wait;
};

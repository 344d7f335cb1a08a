/** A tablet's store and clock, for tests of what it keeps. */
import type { PhoneStore } from '#ui/on-device/phone-store.ts';

export const storeHere = (): PhoneStore & { readonly held: Map<string, unknown> } => {
  const held = new Map<string, unknown>();
  return {
    held,
    isLasting: true,
    holdsKeys: true,
    get: async <T>(key: string) => held.get(key) as T | undefined,
    set: async (key, value) => void held.set(key, value),
    remove: async (key) => void held.delete(key),
    under: async <T>(prefix: string) =>
      [...held].filter(([key]) => key.startsWith(prefix)).map(([, value]) => value as T),
    clear: async (prefix) => {
      for (const key of held.keys()) if (key.startsWith(prefix)) held.delete(key);
    },
  };
};

/** A wall clock that is set by hand. */
export const clockAt = (now: number) => {
  const clock = { now, wall: () => clock.now };
  return clock;
};

/** Everything the store holds, bytes as letters, to look for what must not be there. */
export const readableIn = (held: ReadonlyMap<string, unknown>): string =>
  JSON.stringify([...held], (_, value: unknown) =>
    value instanceof ArrayBuffer
      ? Buffer.from(value).toString('latin1')
      : value instanceof Uint8Array
        ? Buffer.from(value).toString('latin1')
        : value,
  );

/**
 * What this phone keeps: the browser's database, or its small store where that is closed (some
 * private windows). `isLasting` is false when neither works and a reload would lose the answers.
 */
import { createStore, del, delMany, entries, get, keys, set, type UseStore } from 'idb-keyval';

export interface PhoneStore {
  readonly isLasting: boolean;
  /** Keeps keys of the browser's own, which never leave it as text. */
  readonly holdsKeys: boolean;
  readonly get: <T>(key: string) => Promise<T | undefined>;
  readonly set: (key: string, value: unknown) => Promise<void>;
  readonly remove: (key: string) => Promise<void>;
  /** Everything under keys that begin so. */
  readonly under: <T>(prefix: string) => Promise<readonly T[]>;
  readonly clear: (prefix: string) => Promise<void>;
}

const databaseStore = (store: UseStore): PhoneStore => ({
  isLasting: true,
  holdsKeys: globalThis.crypto?.subtle !== undefined,
  get: (key) => get(key, store),
  set: (key, value) => set(key, value, store),
  remove: (key) => del(key, store),
  under: async <T>(prefix: string) =>
    (await entries<string, T>(store)).filter(([key]) => key.startsWith(prefix)).map(([, value]) => value),
  clear: async (prefix) => {
    const names = (await keys<string>(store)).filter((name) => name.startsWith(prefix));
    await delMany(names, store);
  },
});

type Small = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const namesUnder = (storage: Small, prefix: string): readonly string[] =>
  Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '').filter((key) =>
    key.startsWith(prefix),
  );

const read = <T>(text: string | null): T | undefined => (text === null ? undefined : (JSON.parse(text) as T));

const smallStore = (storage: Small, isLasting: boolean): PhoneStore => ({
  isLasting,
  holdsKeys: false,
  get: async <T>(key: string) => read<T>(storage.getItem(key)),
  set: async (key, value) => storage.setItem(key, JSON.stringify(value)),
  remove: async (key) => storage.removeItem(key),
  under: async <T>(prefix: string) =>
    namesUnder(storage, prefix).flatMap((key) => read<T>(storage.getItem(key)) ?? []),
  clear: async (prefix) => {
    for (const key of namesUnder(storage, prefix)) storage.removeItem(key);
  },
});

const memoryStorage = (): Small => {
  const held = new Map<string, string>();
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, value),
    removeItem: (key) => void held.delete(key),
    key: (index) => [...held.keys()][index] ?? null,
    get length() {
      return held.size;
    },
  };
};

const probeKey = 'loadgate-probe';

/** The best store that takes and gives back a value, tried once on each page. */
const openPhoneStore = async (): Promise<PhoneStore> => {
  try {
    const store = databaseStore(createStore('loadgate-phone', 'kept'));
    await store.set(probeKey, 1);
    if ((await store.get(probeKey)) === 1) return store;
  } catch {
    // Closed here; the small store is tried next.
  }
  try {
    window.localStorage.setItem(probeKey, '1');
    return smallStore(window.localStorage, true);
  } catch {
    return smallStore(memoryStorage(), false);
  }
};

let opened: Promise<PhoneStore> | undefined;

export const phoneStore = (): Promise<PhoneStore> => {
  opened ??= openPhoneStore();
  return opened;
};

export const draftKey = (ownerId: string): string => `draft:${ownerId}`;
export const entryKey = (ownerId: string, entryId: string): string => `entry:${ownerId}:${entryId}`;
export const entriesUnder = (ownerId: string): string => `entry:${ownerId}:`;
export const morningDraftKey = (ownerId: string): string => `morning-draft:${ownerId}`;
export const asideMorningKey = (ownerId: string): string => `morning-draft:aside:${ownerId}`;
/** What was begun and not finished, of anybody: every key of a draft starts so. */
export const draftsUnder = [
  'draft:',
  'morning-draft:',
  'message-draft:',
  'correction-draft:',
  'change-draft:',
  'home-questions-draft:',
] as const;
/** Stands while a cuff is on: every page of this phone can tell, and none of what was answered. */
export const cuffOnUnder = 'cuff-on:';
export const cuffOnKey = (ownerId: string): string => `${cuffOnUnder}${ownerId}`;
export const changeKey = (ownerId: string): string => `change-draft:${ownerId}`;
export const homeQuestionsKey = (ownerId: string): string => `home-questions-draft:${ownerId}`;
export const correctionKey = (ownerId: string): string => `correction-draft:${ownerId}`;
export const messageDraftKey = (ownerId: string): string => `message-draft:${ownerId}`;

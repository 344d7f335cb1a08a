/**
 * What one person keeps on this phone while it is being written: under a key that the browser never
 * hands out and that is dropped at sign-out. Where the browser can keep no key (its small store) the
 * values stand as they are.
 */
import { cuffOnUnder, draftsUnder, type PhoneStore, phoneStore } from '#ui/on-device/phone-store.ts';

interface Locked {
  readonly iv: Uint8Array<ArrayBuffer>;
  readonly data: ArrayBuffer;
}

const isLocked = (value: unknown): value is Locked =>
  typeof value === 'object' && value !== null && 'iv' in value && 'data' in value;

const keyName = (ownerId: string): string => `draft-key:${ownerId}`;

const makeKey = async (store: PhoneStore, ownerId: string): Promise<CryptoKey> => {
  const key = await crypto.subtle.generateKey({ name: 'AES-GCM', length: 256 }, false, [
    'encrypt',
    'decrypt',
  ]);
  await store.set(keyName(ownerId), key);
  return key;
};

const keys = new Map<string, Promise<CryptoKey>>();

/** One key for each person, made once; two tabs that begin together agree by a lock. */
const keyOf = (store: PhoneStore, ownerId: string): Promise<CryptoKey> => {
  const known = keys.get(ownerId);
  if (known) return known;
  const find = async () => (await store.get<CryptoKey>(keyName(ownerId))) ?? (await makeKey(store, ownerId));
  const found = Promise.resolve(
    'locks' in navigator ? navigator.locks.request('loadgate-key', find) : find(),
  );
  keys.set(ownerId, found);
  return found;
};

export const writeOwn = async (ownerId: string, name: string, value: unknown): Promise<void> => {
  const store = await phoneStore();
  if (!store.holdsKeys) return store.set(name, value);
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const plain = new TextEncoder().encode(JSON.stringify(value));
  const data = await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, await keyOf(store, ownerId), plain);
  await store.set(name, { iv, data } satisfies Locked);
};

/** undefined when there is nothing, or when its key is gone. */
export const readOwn = async <T>(ownerId: string, name: string): Promise<T | undefined> => {
  const store = await phoneStore();
  const value = await store.get<unknown>(name);
  if (!isLocked(value)) return value as T | undefined;
  try {
    const { iv, data } = value;
    const plain = await crypto.subtle.decrypt({ name: 'AES-GCM', iv }, await keyOf(store, ownerId), data);
    return JSON.parse(new TextDecoder().decode(plain)) as T;
  } catch {
    return undefined;
  }
};

export const removeOwn = async (name: string): Promise<void> => (await phoneStore()).remove(name);

const ofSomebody = ['draft-key:', ...draftsUnder, cuffOnUnder, 'last-morning:'];

/** At sign-out: what was being written goes, with its key and the page kept for days without signal. Encrypted entries stay. */
export const forgetPeople = async (): Promise<void> => {
  keys.clear();
  const store = await phoneStore();
  for (const prefix of ofSomebody) await store.clear(prefix);
  if ('caches' in window) for (const name of await caches.keys()) await caches.delete(name);
};

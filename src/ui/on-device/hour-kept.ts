/**
 * The hour a tablet took along: one at a time, sealed under a PIN, destroyed at sign-out, after too many wrong tries,
 * or by the first look at it after its end. The highest time a look has seen is kept beside it, and a clock set back
 * behind that opens no more than it did then. Where nobody looks it lies there sealed, and time alone destroys nothing.
 */
import type { PhoneStore } from './phone-store.ts';
import { type KeySealed, keyOfPin, openBy, type PinSealed, sealBy, sealUnderPin } from './pin-seal.ts';

const hourKey = 'sealed-hour';
const draftsKey = 'sealed-hour-drafts';

/** Wrong tries before it is destroyed. */
export const mostTries = 5;

/** In the clear on the tablet: nothing of anybody. */
export interface KeptHour {
  readonly sealed: PinSealed;
  /** Instants by the clinic's clock. */
  readonly goneAt: number;
  readonly highest: number;
  /** The clinic's clock minus this tablet's when it was sealed, ms. */
  readonly clockLacks: number;
  readonly triesLeft: number;
}

export interface Clocked {
  /** Of this tablet. */
  readonly wall: () => number;
}

const boundOf = ({ goneAt, clockLacks }: Pick<KeptHour, 'goneAt' | 'clockLacks'>): string =>
  `loadgate hour 1 ${goneAt} ${clockLacks}`;

export const forgetHour = async (store: PhoneStore): Promise<void> => {
  await store.remove(draftsKey);
  await store.remove(hourKey);
};

export interface Taking {
  readonly pin: string;
  readonly goneAt: number;
  /** Instant of the clinic now. */
  readonly now: number;
}

/** Takes the place of an hour that was taken along before. */
export const keepHour = async (
  store: PhoneStore,
  { wall }: Clocked,
  roster: unknown,
  { pin, goneAt, now }: Taking,
): Promise<void> => {
  const open = { goneAt, clockLacks: now - wall() };
  const sealed = await sealUnderPin(pin, roster, boundOf(open));
  await store.remove(draftsKey);
  await store.set(hourKey, { ...open, sealed, highest: now, triesLeft: mostTries } satisfies KeptHour);
};

interface Looked {
  readonly kept: KeptHour;
  /** The highest instant seen so far: never earlier than the one before. */
  readonly now: number;
}

/** Each look keeps the time it saw. null = there is none, or its time is over and it was destroyed. */
export const lookAtHour = async (store: PhoneStore, { wall }: Clocked): Promise<Looked | null> => {
  const kept = await store.get<KeptHour>(hourKey);
  if (!kept) return null;
  const now = Math.max(kept.highest, wall() + kept.clockLacks);
  if (now >= kept.goneAt) {
    await forgetHour(store);
    return null;
  }
  if (now > kept.highest) await store.set(hourKey, { ...kept, highest: now });
  return { kept: { ...kept, highest: now }, now };
};

export type Opened<R> =
  | { readonly kind: 'open'; readonly roster: R; readonly drafts: unknown; readonly key: CryptoKey }
  | { readonly kind: 'wrong'; readonly triesLeft: number }
  | { readonly kind: 'gone' };

/** The try is counted before it is made: a page closed in between has used it up. */
export const openHour = async <R>(store: PhoneStore, clock: Clocked, pin: string): Promise<Opened<R>> => {
  const looked = await lookAtHour(store, clock);
  if (!looked) return { kind: 'gone' };
  const { kept } = looked;
  const triesLeft = kept.triesLeft - 1;
  await store.set(hourKey, { ...kept, triesLeft });
  const key = await keyOfPin(pin, kept.sealed);
  const roster = await openBy<R>(key, kept.sealed, boundOf(kept));
  if (roster === null) {
    if (triesLeft > 0) return { kind: 'wrong', triesLeft };
    await forgetHour(store);
    return { kind: 'gone' };
  }
  await store.set(hourKey, { ...kept, triesLeft: mostTries });
  const drafts = await store.get<KeySealed>(draftsKey);
  return {
    kind: 'open',
    roster,
    drafts: drafts ? await openBy(key, drafts, boundOf(kept)) : null,
    key,
  };
};

/** What was pressed and not finished, under the key of the hour: it goes with it. */
export const keepDrafts = async (store: PhoneStore, key: CryptoKey, drafts: unknown): Promise<void> => {
  const kept = await store.get<KeptHour>(hourKey);
  if (kept) await store.set(draftsKey, await sealBy(key, drafts, boundOf(kept)));
};

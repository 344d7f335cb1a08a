/** What signing out would leave on this phone or take from it, and the ways out. */
import { endSignIn } from '#ui/account/sign-in/end-sign-in.ts';
import { forgetSavedPages } from '#ui/account/sign-in/saved-page.ts';
import { cuffOnUnder, draftsUnder, phoneStore } from '#ui/on-device/phone-store.ts';
import type { Saved } from '../outbox/outbox.ts';
import { forgetPeople } from '../phone/own-store.ts';

export interface LeftBehind {
  /** Begun and not finished: a session, a morning check, a message. */
  readonly begun: number;
  /** Finished and not with the clinic. */
  readonly unsent: number;
  /** Its clock and the button that takes it off are on another page than signing out. */
  readonly isCuffOn: boolean;
}

/** Read alone while somebody waits for it to come off. */
export const isCuffStillOn = async (): Promise<boolean> =>
  (await (await phoneStore()).under<true>(cuffOnUnder)).length > 0;

export const leftBehind = async (): Promise<LeftBehind> => {
  const store = await phoneStore();
  const drafts = await Promise.all(draftsUnder.map((prefix) => store.under<unknown>(prefix)));
  const entries = await store.under<Saved>('entry:');
  return {
    isCuffOn: await isCuffStillOn(),
    begun: drafts.flat().filter((draft) => draft !== null && draft !== '').length,
    unsent: entries.filter(({ status }) => status !== 'stored').length,
  };
};

/** Read by the service worker: while it is there no page of a person opens on this phone. */
const lockName = 'locked';

/** Whether the server has heard of it. */
const isHeardOf = async (): Promise<boolean> => {
  try {
    return (await endSignIn()).status < 500;
  } catch {
    return false;
  }
};

/**
 * Ends the sign-in and leads on. Without signal the phone is locked until the server has heard of it.
 * `keeps`: what was begun stays, sealed under a key of this phone, for whoever signs in as the same person.
 */
export const leave = async (keeps: boolean): Promise<void> => {
  if (!keeps) await forgetPeople();
  if ('caches' in window) {
    if (keeps) await forgetSavedPages();
    await caches.open(lockName);
  }
  const isHeard = await isHeardOf();
  if (isHeard && 'caches' in window) await caches.delete(lockName);
  if (isHeard) window.location.assign('/sign-in');
  else window.location.assign('/today');
};

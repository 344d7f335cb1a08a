/**
 * A command says here, inside its write, that a record has changed. Whoever keeps something that rests on
 * records subscribes when the store is opened (`open-store.ts`), and is asked once for each record, just
 * before the transaction commits.
 */
import type { Access } from './access.ts';
import { perStore } from './database/per-store.ts';
import type { Store } from './database/store.ts';

export interface Subscriber {
  /** What it keeps. */
  readonly name: string;
  readonly patientChanged: (access: Access, patientId: string) => Promise<void>;
  /** Something changed on which every patient of the clinic rests. */
  readonly clinicChanged: (access: Access) => Promise<void>;
}

const subscribers = perStore('subscribers', (): Subscriber[] => []);

export const subscribe = (store: Store, subscriber: Subscriber): void => {
  subscribers(store).push(subscriber);
};

/** A store opened past `open-store.ts` would take the change and leave everything that rests on it as it was. */
const subscribersOf = (store: Store): readonly Subscriber[] => {
  const found = subscribers(store);
  if (found.length === 0) throw new Error('Nobody has subscribed to what changes in this store.');
  return found;
};

/** What rests on this patient's record may have changed. */
export const changed = (access: Access, patientId: string): void => {
  for (const { name, patientChanged } of subscribersOf(access.store))
    access.store.beforeCommit(`${name} ${patientId}`, () => patientChanged(access, patientId));
};

/** What rests on the clinic's own choices may have changed, for all of its patients. */
export const clinicChanged = (access: Access): void => {
  for (const { name, clinicChanged: work } of subscribersOf(access.store))
    access.store.beforeCommit(`${name} ${access.clinicId}`, () => work(access));
};

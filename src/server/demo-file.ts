/** A file of the demo clinic: commands read it as on the demo's today, and only the server asks for DEMO=1. */
import { isPopulated } from '#data/database/key-fingerprints.ts';
import type { Store } from '#data/database/store.ts';
import { lastRecordedAt } from '#data/patients/last-recorded.ts';
import { demoClinic, otherClinic } from '#demo/clinic.ts';
import type { ClinicalClock } from './clock.ts';

/** Whose sign-ins stand in the repository for everybody to read, and open nothing outside the demo. */
export const inventedClinics: readonly string[] = [demoClinic.id, otherClinic.id];

const clinicsIn = (store: Store): readonly string[] =>
  isPopulated(store)
    ? (store.reader.client.prepare('SELECT id FROM clinic').all() as { id: string }[]).map(({ id }) => id)
    : [];

/** Whether a file holds no clinic but the invented ones, whatever its schema. */
export const holdsOnlyTheDemo = (store: Store): boolean =>
  clinicsIn(store).every((id) => inventedClinics.includes(id));

export const isDemoFile = (store: Store): boolean => clinicsIn(store).length > 0 && holdsOnlyTheDemo(store);

/** A demo left open last week goes on from there: the clock never runs behind what is stored. */
export const catchUp = async (at: {
  readonly store: Store;
  readonly clock: ClinicalClock;
}): Promise<void> => {
  at.clock.moveTo((await lastRecordedAt(at.store)) ?? 0);
};

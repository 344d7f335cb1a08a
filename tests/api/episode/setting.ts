/** A patient with one signed exercise, acted on at chosen days through the procedures. */
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { instantAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { asClinician, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, signedExercise, start, twoClinics, zone } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

export const firstDay = '2026-03-02';

export interface CareSetting {
  readonly store: Store;
  readonly patientId: string;
  readonly item: { readonly prescriptionId: string; readonly itemId: string };
  /** Nine in the morning of a day of the story, day 0 first. */
  readonly accessOn: (day: number, time?: string) => Access;
  readonly clinician: (day?: number, time?: string) => ReturnType<typeof asClinician>;
  readonly patient: (day?: number, time?: string) => ReturnType<typeof asPatient>;
  readonly administrator: (day?: number) => ReturnType<typeof asPerson>;
}

export const careSetting = async (): Promise<CareSetting> => {
  const store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  const item = await signedExercise(clinician, patientId);
  const accessOn = (day = 0, time = '09:00', actor = 'clinician-a') =>
    accessOf(
      store,
      'a',
      actor,
      day === 0 && time === '09:00' ? start : instantAt(addDays(firstDay, day), time, zone),
      actor,
    );
  return {
    store,
    patientId,
    item,
    accessOn,
    clinician: (day, time) => asClinician(accessOn(day, time)),
    patient: (day, time) => asPatient(accessOn(day, time, 'patient-user'), patientId),
    administrator: (day) =>
      asPerson(accessOn(day), { role: 'administrator', administers: true, userId: 'admin-a' }),
  };
};

/** A second clinician of clinic A, by name. */
export const colleague = async (at: CareSetting, name: string): Promise<string> => {
  const added = await addStaff(at.accessOn(0), {
    name,
    email: `${name.toLowerCase()}@test.invalid`,
    role: 'clinician',
    administers: false,
  });
  if (!added) throw new Error('The address is taken.');
  return added.userId;
};

export const episode = {
  diagnoses: ['Knee osteoarthritis'],
  joints: ['right-knee'],
  followedJoints: ['right-knee'],
  goals: ['Carry my shopping up the stairs'],
  referrer: 'Dr Referrer',
  contacts: [{ role: 'Daughter', name: 'D', phone: null }],
};

export const change = (episodeId: string, to: string, on: string, more: object = {}) => ({
  episodeId,
  to,
  on,
  reason: 'Said at the visit.',
  breakKind: null,
  expectedBack: null,
  ...more,
});

/** An active episode of care since day 0. */
export const inCare = async (at: CareSetting): Promise<string> => {
  const { clinician: staff } = at.clinician();
  const { patientId } = at;
  const id = await staff.episodes.open({ patientId, episode, reason: 'Referral read.' });
  await staff.episodes.change({ patientId, change: change(id, 'active', firstDay) });
  return id;
};

export const kneeRequest = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  knownOneRepMaxKg: 12,
};

export const limitOn = (over: object = {}) => ({
  joint: 'right-knee',
  kind: 'load-limit',
  limitKg: 3,
  from: firstDay,
  to: null,
  author: 'Dr Surgeon',
  remark: null,
  ...over,
});

/** What the worklist shows of the patient. */
export const worklistItemsOf = async (at: CareSetting, day: number, time?: string) => {
  const { lines } = await at.clinician(day, time).clinician.worklist.list();
  return lines
    .filter((item) => item.patientId === at.patientId)
    .flatMap((item) => [item.item, ...item.others]);
};

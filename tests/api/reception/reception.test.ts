/** The front desk: names, numbers and appointments, and nothing of a record. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { asAdministrator, asClinician, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
});
afterAll(() => store.close());

const desk = (minutesOn = 0) => {
  const access = accessOf(store, 'a', 'front-desk');
  return asPerson({ ...access, now: access.now + minutesOn * 60_000 }, { role: 'reception' }).reception;
};
const refusalOf = (call: Promise<unknown>) =>
  call.then(
    () => null,
    (error: { problem?: string; message: string }) => error,
  );

describe('appointments', () => {
  it('are listed from today on, soonest first, and a taken-back one is not', async () => {
    const { patientId, otherPatientId } = setting;
    const { day } = setting.clinician;
    await desk().book({ patientId, booking: { when: `${day}T10:30`, place: null } });
    await asClinician(setting.clinician).clinician.bookings.book({
      patientId: otherPatientId,
      booking: { when: `${day}T09:00`, place: 'Room 2' },
    });
    expect((await desk().appointments()).map(({ patientId: id, next }) => [id, next?.time])).toEqual([
      [otherPatientId, '09:00'],
      [patientId, '10:30'],
    ]);
    await desk(5).book({ patientId: otherPatientId, booking: { when: null, place: null } });
    expect((await desk().appointments()).map((one) => one.patientId)).toEqual([patientId]);
  });

  it('are not booked over one that a colleague changed meanwhile', async () => {
    const { patientId } = setting;
    const booking = { when: `${setting.clinician.day}T11:00`, place: null };
    const refused = await refusalOf(desk().book({ patientId, booking, seen: 'older' }));
    expect(refused?.problem).toBe('conflict');
  });
});

describe('names and numbers', () => {
  it('are found by any part of the name, and of the own clinic alone', async () => {
    const { details } = await desk().person({ patientId: setting.patientId });
    const family = details.find(({ detail }) => detail === 'familyName')?.value ?? '';
    const { people } = await desk().find({ name: family.slice(0, 3).toUpperCase() });
    expect(people.map(({ patientId }) => patientId)).toContain(setting.patientId);
    expect(people.map(({ patientId }) => patientId)).not.toContain(setting.strangerPatientId);
  });

  it('are corrected by a new version under the name of the desk; the day of birth is not', async () => {
    const { patientId } = setting;
    const change = (detail: string, value: string, seen: number) =>
      desk().changeDetails({
        patientId,
        changes: [{ detail, value, because: 'changed-since', reason: null, seen }],
      });
    const { details } = await desk().person({ patientId });
    const seenOf = (name: string) => details.find(({ detail }) => detail === name)?.seen ?? 0;
    await change('phone', '020 913 0777', seenOf('phone'));
    const now = (await desk().person({ patientId })).details.find(({ detail }) => detail === 'phone');
    expect(now?.value).toBe('020 913 0777');
    const refused = await refusalOf(change('birthDay', '1950-01-02', seenOf('birthDay')));
    expect(JSON.stringify(refused)).toContain('A clinician corrects the day of birth');
  });

  it('lose no telephone number unasked', async () => {
    const { patientId } = setting;
    const phone = async () =>
      (await desk().person({ patientId })).details.find(({ detail }) => detail === 'phone')!;
    const set = async (value: string | null, confirmed = false) =>
      desk().changeDetails({
        patientId,
        changes: [
          { detail: 'phone', value, because: 'changed-since', reason: null, seen: (await phone()).seen },
        ],
        confirmed,
      });
    await set('020 913 0777');
    const asked = await refusalOf(set(null));
    expect(JSON.stringify(asked)).toContain('020 913 0777 now. Is it to be taken away?');
    expect((await phone()).value).toBe('020 913 0777');
    await set(null, true);
    expect((await phone()).value).toBeNull();
    // There is nothing left to lose.
    await set(null);
  });

  it('of a person who is added join nobody’s care', async () => {
    const patient = { givenName: 'Isolde', familyName: 'Venneby', birthDay: '1960-05-04' };
    const added = await desk().add({ patient });
    if (added.answer !== 'added') throw new Error('A record of that name exists.');
    const { members } = (await asClinician(setting.clinician).clinician.team.get({
      patientId: added.patientId,
    })) as { members: readonly unknown[] };
    expect(members).toEqual([]);
  });
});

it('leaves a row in the audit for each person looked at', async () => {
  const { patientId } = setting;
  await desk().person({ patientId });
  await flushReads(store);
  const last = store.reader.client
    .prepare("SELECT * FROM audit WHERE subject = 'reception.person' ORDER BY sequence DESC")
    .get();
  expect(last).toMatchObject({ act: 'read', patient_id: patientId, actor_id: 'front-desk' });
});

it('answers nothing of a record: no procedure of a clinician, an administrator or a patient', async () => {
  const caller = asPerson(accessOf(store, 'a', 'front-desk'), { role: 'reception' });
  const { patientId } = setting;
  const calls = [
    caller.clinician.people.get({ patientId }),
    caller.clinician.review.get({ patientId }),
    caller.clinician.worklist.list({}),
    caller.admin.staff.list(),
    caller.patient.today.get(),
  ];
  for (const call of calls) expect((await refusalOf(call))?.problem).toBe('not-yours');
  const said = JSON.stringify(await desk().person({ patientId }));
  expect(said).not.toMatch(/diagnos|dose|pain|screen|exercise/i);
});

it('does not administer the clinic as well', async () => {
  const admin = asAdministrator(setting.clinician).admin.staff;
  const who = { name: 'Front Desk', email: 'desk@test.invalid', role: 'reception' as const };
  expect((await refusalOf(admin.add({ ...who, administers: true })))?.problem).toBe('refused');
  const { userId } = await admin.add({ ...who, administers: false });
  expect((await admin.list()).find(({ id }) => id === userId)?.role).toBe('reception');
});

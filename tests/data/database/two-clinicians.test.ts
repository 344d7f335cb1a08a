/** Two clinicians at once: the second is told by name, and nothing is overwritten. */
import { randomUUID } from 'node:crypto';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { sendMessage } from '#data/messages/messages.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, type Setting, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const as = (name: string) => asClinician(accessOf(store, 'a', name, start, name)).clinician;

const baselineValues = (usualPain: number) => ({
  joint: 'right-knee',
  usualPain,
  usualPainTop: usualPain,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 15,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  reason: 'As told at intake.',
});

it('of two who set a baseline from the same page, the second is told whose stand', async () => {
  const { patientId, clinician } = setting;
  await as('Ana').review.setBaseline({ patientId, baseline: baselineValues(2), seen: 0 });
  const second = as('Ben').review.setBaseline({ patientId, baseline: baselineValues(5), seen: 0 });
  await expect(second).rejects.toThrow(
    /Ana set a baseline for this joint in the meantime. Your baseline was not saved/,
  );
  expect((await baselinesOf(clinician, patientId)).map((row) => row.usualPain)).toEqual([2]);
  await as('Ben').review.setBaseline({ patientId, baseline: baselineValues(3), seen: 1 });
  expect((await baselinesOf(clinician, patientId)).map((row) => row.usualPain)).toEqual([2, 3]);
});

it('of two who book the next review from the same page, the second is told whose day stands', async () => {
  const { patientId, clinician } = setting;
  const booking = (day: string) => ({ when: day, place: null });
  await as('Ana').bookings.book({ patientId, booking: booking('2026-03-09'), seen: null });
  const second = as('Ben').bookings.book({ patientId, booking: booking('2026-03-10'), seen: null });
  await expect(second).rejects.toThrow(/Ana changed the booking in the meantime/);
  expect((await bookingOf(clinician, patientId))?.day).toBe('2026-03-09');
});

it.each([
  ['2026-03-01', /from today to one year ahead/],
  ['2027-03-04', /from today to one year ahead/],
  ['2026-02-30', /a day that exists/],
])('a review cannot be booked for %s', async (day, words) => {
  const booking = { when: day, place: null };
  await expect(as('Ana').bookings.book({ patientId: setting.patientId, booking })).rejects.toMatchObject({
    refusals: [{ reason: expect.stringMatching(words) }],
  });
});

it('a twenty-first message of a day is refused with what to do instead', async () => {
  const { patientId } = setting;
  const mine = asPatient(accessOf(store, 'a', 'patient-user'), patientId).patient;
  const send = (text: string) =>
    mine.entries.send({ kind: 'message', entry: { entryId: randomUUID(), text } });
  for (let count = 0; count < 20; count++) await send(`Question ${count}`);
  await expect(send('One more')).rejects.toThrow(/Ring the clinic/);
  expect((await mine.messages.get()).lines).toHaveLength(20);
});

it('a message of a phone is kept once however often it is sent, and stands with what the clinic wrote', async () => {
  const { patientId } = setting;
  const access = accessOf(store, 'a', 'patient-user');
  const mine = asPatient(access, patientId).patient;
  const entry = { entryId: randomUUID(), text: 'May I swim?' };
  const sent = [];
  for (const text of ['May I swim?', 'May I swim?', 'Something else'])
    sent.push((await mine.entries.send({ kind: 'message', entry: { ...entry, text } })).stored);
  expect(sent).toEqual(['stored', 'known', 'conflict']);
  await sendMessage({ ...access, now: access.now + 1 }, patientId, 'Yes, twice a week.');
  expect((await mine.messages.get()).lines.map(({ from }) => from)).toEqual(['clinic', 'patient']);
});

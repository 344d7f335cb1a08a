/** The next appointment stands on the patient's day as it was booked, and goes when it is over or taken back. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics, zone } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';

let store: Store;
let patientId: string;
let work: ReturnType<typeof workingPatient>;
beforeEach(async () => {
  booked = 0;
  store = freshStore();
  ({ patientId } = await twoClinics(store));
  work = workingPatient(store, patientId);
  await work.signed();
});
afterEach(() => store.close());

const today = dayAt(start, zone);
/** One a second: the newest is told by its instant. */
let booked = 0;
const book = (day: string | null, time: string | null = null, place: string | null = null) =>
  work
    .clinicianAt(start + 1000 * booked++)
    .clinician.bookings.book({ patientId, booking: { when: day && time ? `${day}T${time}` : day, place } });
const shown = async (at = start) => (await work.patientAt(at).patient.today.get()).appointment ?? null;
/** A time of day at the clinic so many minutes from now. */
const clock = (minutes: number) =>
  new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: zone }).format(
    start + minutes * 60_000,
  );

it('is none where nothing was booked, or the booking was taken back', async () => {
  expect(await shown()).toBeNull();
  await book(addDays(today, 3));
  await book(null);
  expect(await shown()).toBeNull();
});

it('has day, time and place as they were booked, the newest booking alone', async () => {
  await book(addDays(today, 9), '09:00', 'North site');
  await book(addDays(today, 3), '10:30', 'by video');
  expect(await shown()).toEqual({ day: addDays(today, 3), time: '10:30', place: 'by video' });
  await book(addDays(today, 4));
  expect(await shown()).toEqual({ day: addDays(today, 4), time: null, place: null });
});

it.each([
  [-59, true],
  [-60, true],
  [-61, false],
])('booked for %i minutes from now is shown: %s', async (minutes, isShown) => {
  await book(today, clock(minutes));
  expect((await shown()) !== null).toBe(isShown);
});

it('without a time is shown to the end of its day', async () => {
  await book(addDays(today, 1));
  expect(await shown(start + dayMs)).not.toBeNull();
  expect(await shown(start + 2 * dayMs)).toBeNull();
});

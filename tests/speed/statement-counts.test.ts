/** What a page asks of the file is a fixed number of statements, however much there is to show. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import { takeSession } from '#data/entries/take-entry.ts';
import { addPatient } from '#data/patients/people.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, signedExercise } from '#tests/support/clinic.ts';
import { type BusyClinic, busyClinic, sessionAt } from './busy-clinic.ts';
import { statementsDuring } from './statements.ts';

const hour = 3_600_000;

const clinicianOf = (clinic: BusyClinic) =>
  asClinician(accessOf(clinic.store, 'a', 'clinician-a', clinic.now + hour));
const patientOf = (clinic: BusyClinic) =>
  asPatient(accessOf(clinic.store, 'a', clinic.patientId, clinic.now + hour), clinic.patientId);

const pages: readonly [string, (clinic: BusyClinic) => Promise<unknown>][] = [
  ['the worklist', (clinic) => clinicianOf(clinic).clinician.worklist.list()],
  ['the list of patients', (clinic) => clinicianOf(clinic).clinician.people.list()],
  [
    'the review of a record',
    (clinic) => clinicianOf(clinic).clinician.review.get({ patientId: clinic.patientId }),
  ],
  ['today’s page', (clinic) => patientOf(clinic).patient.today.get()],
  ['a patient’s own history', (clinic) => patientOf(clinic).patient.history.get()],
];

/** More people of the same clinic, each with something on the worklist. */
const addPeople = async (clinic: BusyClinic, people: number): Promise<void> => {
  const access = accessOf(clinic.store, 'a', 'clinician-a', clinic.now);
  for (let person = 0; person < people; person++) {
    const id = await addPatient(access, {
      givenName: 'Test',
      familyName: `Person ${person}`,
      birthDay: '1958-06-01',
      phone: null,
    });
    await signedExercise(access, id);
  }
};

describe('statements of a page do not grow with what it shows', () => {
  let small: BusyClinic;
  let large: BusyClinic;
  beforeAll(async () => {
    small = await busyClinic(2);
    large = await busyClinic(10);
    await addPeople(large, 5);
  });
  afterAll(() => {
    small.store.close();
    large.store.close();
  });

  it.each(pages)('%s', async (_, ask) => {
    const [few, many] = [
      await statementsDuring(small.store, () => ask(small)),
      await statementsDuring(large.store, () => ask(large)),
    ];
    expect(few.length).toBeGreaterThan(0);
    expect(many.length).toBe(few.length);
  });

  it('a repeat of an entry asks once whether it is known and writes nothing', async () => {
    const at = large.now + 2 * hour;
    const access = accessOf(large.store, 'a', large.patientId, at);
    const entry = sessionAt(large, at, 'session-repeated');
    await takeSession(access, large.patientId, entry);
    // What the pages above noted as read is written now, and not while this is counted.
    await flushReads(large.store);
    const asked = await statementsDuring(large.store, () => takeSession(access, large.patientId, entry));
    expect(asked).toHaveLength(1);
  });
});

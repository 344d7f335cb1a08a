/** The clinic’s figures of a history made by hand through the procedures: each number was counted beforehand. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import { asAdministrator, asClinician, asPerson } from '#tests/support/callers.ts';
import { accessOf, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
/** From Monday 2 March 2026; asked 36 days later, on Tuesday 7 April. */
const at = (day: number, hour = 9) =>
  accessOf(store, 'a', 'clinician-a', start + day * dayMs + (hour - 9) * 3_600_000, 'Clinician A');
const asked = () => asClinician(at(36)).clinician.learning;

/** Contact `place` + 1 hours after the sign; with the sixth nobody has spoken. */
const signed = async (patientId: string, place: number): Promise<void> => {
  const { danger } = asClinician(at(2)).clinician;
  const sign = { flags: ['calf-pain-swelling'], joint: null, remark: null };
  const signId = await danger.report({ patientId, sign });
  if (place === 5) return;
  await asClinician(at(2, 10 + place)).clinician.danger.recordContact({
    patientId,
    contact: {
      ...{ signIds: [signId], decisionIds: [], reached: 'patient', found: 'Soft.', advised: 'Ring again.' },
      ...{ referredTo: null, againInHours: null },
    },
  });
};

const lived = async (place: number): Promise<void> => {
  const person = { givenName: `Person ${place}`, familyName: 'Made', birthDay: '1958-06-01', phone: null };
  const patientId = await addPatient(at(0), person);
  const item = await signedExercise(at(0), patientId);
  await asClinician(at(0, 10)).clinician.prescriptions.saveProgramme({
    patientId,
    programme: { lines: [{ itemId: item.itemId, weekdays: [1, 4] }] },
  });
  await signed(patientId, place);
  // Thursday and Friday of one week with two planned days; the first person on Saturday as well.
  for (const day of place === 0 ? [3, 4, 5] : [3, 4]) await sendSession(at(day, 18), patientId, item, 2);
  for (let day = 10; day <= 10 + place; day++) await sendMorning(at(day), patientId, 2);
  await sendMorning(at(20), patientId, null);
};

beforeAll(async () => {
  store = freshStore();
  const { stranger, strangerPatientId } = await twoClinics(store);
  await signedExercise(stranger, strangerPatientId);
  for (let place = 0; place < 6; place++) await lived(place);
}, 120_000);
afterAll(() => store.close());

describe('the clinic in figures', () => {
  it('are those counted by hand', async () => {
    const found = await asked().get();
    // Two people of the clinic have nothing on record; those of another clinic are none of it.
    expect(found).toMatchObject({ weeks: 26, people: 8 });
    const times = { people: 6, signs: 6, open: 1, low: 2, middle: 3, high: 5 };
    expect(found.contact).toEqual(times);
    expect(found.contactBy).toEqual([{ urgency: 'same-day', ...times }]);
    // 35 days after the first dose until yesterday; one to six answers; one without a pain is none.
    expect(found.mornings).toEqual({
      ...{ people: 6, asked: 210, answered: 21 },
      share: { low: 2 / 35, middle: 3 / 35, high: 5 / 35 },
    });
    // Mondays and Thursdays: six and five.
    expect(found.sessions).toEqual({
      ...{ people: 6, planned: 66, done: 12 },
      share: { low: 2 / 11, middle: 2 / 11, high: 2 / 11 },
    });
    expect(found.work).toMatchObject({ people: 6, signatures: 6, contacts: 5 });
    expect(found.work!.weeks).toBeCloseTo((6 * 36) / 7, 9);
    expect(found.work!.signaturesAWeek.middle).toBeCloseTo(7 / 36, 9);
    const [lowLoad, others] = [
      found.methods.filter(({ method }) => method === 'low-load'),
      found.methods.filter(({ method }) => method !== 'low-load'),
    ];
    expect(lowLoad[0]!.figures).toMatchObject({
      people: 6,
      dose: { people: 6, exercises: 6, above: { count: 0, of: 6 } },
      outcomes: { people: 0 },
    });
    expect(others.map(({ figures }) => figures!.people)).toEqual([0, 0]);
  });

  it('name nobody, on the page or in the file', async () => {
    const told = JSON.stringify(await asked().get()) + (await asked().file());
    expect(told).not.toMatch(/Person \d|Made|Clinician A|clinician-a/);
  });

  it('stand in the file with what each is of, in rows that all have the same cells', async () => {
    const rows = (await asked().file()).trimEnd().split('\r\n');
    expect(rows).toContain('"Still open","All warning signs","1","6","","","6"');
    expect(rows).toContain('"From danger to contact, hours, median","Same day","3","","","","6"');
    expect(rows).toContain('"Morning checks, answered","","21","210","","","6"');
    expect(rows).toContain('"Sessions, done","","12","66","","","6"');
    expect(rows).toContain('"People above their first dose","Low load","0","6","0","0.3903","6"');
    expect(new Set(rows.map((row) => row.split('","').length))).toEqual(new Set([7]));
  });

  it('are for clinicians and administrators, and that somebody asked stands in the audit', async () => {
    await expect(asAdministrator(at(36)).clinician.learning.get()).resolves.toMatchObject({ people: 8 });
    const frontDesk = asPerson(at(36), { role: 'reception' }).clinician.learning;
    await expect(frontDesk.get()).rejects.toThrow(/clinicians and administrators/);
    await flushReads(store);
    const count = "SELECT count(*) AS n FROM audit WHERE subject = 'clinic-figures-file'";
    expect(store.reader.client.prepare(count).get()).toMatchObject({ n: 2 });
  });
});

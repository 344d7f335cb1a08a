/** Name, numbers and hours of the clinic, and what a new clinic still has to settle. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { clinicOf } from '#data/patients/people.ts';
import { asAdministrator } from '#tests/support/callers.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
beforeEach(async () => {
  store = freshStore();
  await twoClinics(store);
});
afterEach(() => store.close());

const admin = (who = 'admin-a') => asAdministrator(accessOf(store, 'a', who)).admin;
const clinic = async () => (await clinicOf(store, 'a'))!;

describe('what the clinic says of itself', () => {
  it('is entered line by line, and two lines changed at the same time by two people are both kept', async () => {
    const { texts } = await admin().clinicDetails.get();
    await Promise.all([
      admin('Imelda').clinicDetails.enter({ detail: 'name', value: 'Harbour Clinic', seen: texts.name }),
      admin('Piotr').clinicDetails.enter({ detail: 'phone', value: '020 913 0140', seen: texts.phone }),
    ]);
    expect(await clinic()).toMatchObject({ name: 'Harbour Clinic', phone: '020 913 0140' });
  });

  it('is not overwritten where a colleague changed the same line meanwhile: who, and to what, is said', async () => {
    const enter = (who: string, value: string) =>
      admin(who).clinicDetails.enter({ detail: 'name', value, seen: 'Clinic a' });
    await enter('Imelda', 'Harbour Clinic');
    await expect(enter('Piotr', 'Quay Clinic')).rejects.toThrow(
      /^Imelda has changed this to “Harbour Clinic” meanwhile/,
    );
    expect(await clinic()).toMatchObject({ name: 'Harbour Clinic' });
  });

  it('tells who changed what, from what to what', async () => {
    await admin('Imelda').clinicDetails.enter({ detail: 'urgent-number', value: '116 117', seen: null });
    const { history } = await admin().clinicDetails.get();
    expect(history['urgent-number']).toMatchObject([{ before: '', after: '116 117', by: 'Imelda' }]);
    expect(history.name).toEqual([]);
  });

  it.each([
    ['name', 'X', /Write the name/],
    ['phone', 'the desk', /such as 020 913 0140/],
    ['emergency-number', '', /such as 112/],
  ] as const)('is refused in words that say the way out: %s “%s”', async (detail, value, said) => {
    const seen = (await admin().clinicDetails.get()).texts[detail];
    await expect(admin().clinicDetails.enter({ detail, value, seen })).rejects.toThrow(said);
  });
});

describe('the monitoring hours', () => {
  it('are entered by day, shown as patients read them, and remembered as they were', async () => {
    const { hours } = await admin().clinicDetails.get();
    await admin('Imelda').clinicDetails.enterHours({ hours: { Mon: '8-12', Tue: '8-12' }, seen: hours.seen });
    const now = await admin().clinicDetails.get();
    expect(now.hours.inWords).toBe('Monday and Tuesday, 8:00 to 12:00');
    expect(now.history['monitoring-hours']).toMatchObject([
      { before: 'Monday to Friday, 9:00 to 17:00', after: now.hours.inWords, by: 'Imelda' },
    ]);
  });

  it('that cannot be read name every day that is wrong and change nothing', async () => {
    const { hours } = await admin().clinicDetails.get();
    const wrong = admin().clinicDetails.enterHours({ hours: { Mon: 'x', Fri: '9-8' }, seen: hours.seen });
    await expect(wrong).rejects.toMatchObject({
      refusals: [{ field: 'input.hours.Mon' }, { field: 'input.hours.Fri' }],
    });
    expect((await admin().clinicDetails.get()).hours.seen).toBe(hours.seen);
  });
});

describe('the first-day list', () => {
  const states = async () =>
    Object.fromEntries((await admin().firstDay.list()).map(({ job, isDone }) => [job, isDone]));

  it('is read from the record: a job is done once what it asks for stands there', async () => {
    const before = await states();
    expect(before).toMatchObject({
      'clinic-numbers': false,
      'monitoring-hours': true,
      'covering-clinician': false,
      'second-clinician': false,
      'consent-wording': false,
    });
    await admin().clinicDetails.enter({ detail: 'urgent-number', value: '116 117', seen: null });
    const colleague = { role: 'clinician', administers: false } as const;
    const { userId } = await admin().staff.add({ name: 'Piotr', email: 'p@test.invalid', ...colleague });
    await admin().staff.add({ name: 'Nuala', email: 'n@test.invalid', ...colleague });
    await admin().care.nameCoveringClinician({ userId });
    for (const { kind, text } of await admin().care.wordings())
      await admin().care.writeWording({ kind, text });
    expect(Object.values(await states())).toEqual([true, true, true, true, true]);
    await admin().staff.deactivate({ userId });
    expect(await states()).toMatchObject({ 'covering-clinician': false, 'second-clinician': false });
  });
});

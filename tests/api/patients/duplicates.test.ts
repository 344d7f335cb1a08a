/** A patient who may be on record already is asked about before a second record is made. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient } from '#data/patients/people.ts';
import { accessOf } from '#tests/support/clinic.ts';
import { type CareSetting, careSetting, colleague } from '../episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const person = { givenName: 'Maeve', familyName: 'Tarrow', birthDay: '1958-08-14' };
const create = (over: object = {}, otherThan: readonly string[] = []) =>
  at.clinician().clinician.people.create({ patient: { ...person, ...over }, otherThan: [...otherThan] });
const added = async (over: object = {}) => {
  const answer = await create(over);
  if (answer.answer !== 'added') throw new Error('Somebody looks the same.');
  return answer.patientId;
};
const count = async () => (await at.clinician().clinician.people.list()).patients.length;

describe('adding a patient', () => {
  it('takes name and day of birth alone, and everything else with its first version', async () => {
    const patientId = await added({ email: 'm@example.org', generalPractitioner: 'Dr Invented' });
    const details = await at.clinician().clinician.people.details({ patientId });
    expect(
      details.filter(({ value }) => value !== null).map(({ detail, value, seen }) => [detail, value, seen]),
    ).toEqual([
      ['givenName', 'Maeve', 1],
      ['familyName', 'Tarrow', 1],
      ['birthDay', '1958-08-14', 1],
      ['email', 'm@example.org', 1],
      ['generalPractitioner', 'Dr Invented', 1],
    ]);
  });

  it('asks before a second record of the same person, names whom it found, and makes none', async () => {
    const patientId = await added();
    const before = await count();
    expect(await create({ givenName: 'Máeve', familyName: 'Tarow' })).toEqual({
      answer: 'possible-duplicate',
      found: [{ patientId, person, signs: ['birth-and-name'] }],
    });
    expect(await count()).toBe(before);
  });

  it('goes on only when everybody found is named as another person, and that is audited', async () => {
    const first = await added({ phone: '020 913 0100' });
    const second = await added({
      ...person,
      givenName: 'Desmond',
      birthDay: '1990-01-01',
      email: 'd@example.org',
    });
    const alike = { phone: '020 913 0100', email: 'D@example.org' };
    expect(await create(alike, [first])).toMatchObject({ answer: 'possible-duplicate' });
    expect(await create(alike, [second])).toMatchObject({ answer: 'possible-duplicate' });
    expect(await create(alike, [first, second])).toMatchObject({ answer: 'added' });
    const [row] = at.store.reader.client
      .prepare("SELECT detail FROM audit WHERE subject = 'not-a-duplicate'")
      .all() as { detail: string }[];
    expect(JSON.parse(row!.detail).otherThan.sort()).toEqual([first, second].sort());
  });

  it('says of a patient the caller may not open only that it is a colleague’s', async () => {
    const patientId = await added();
    const other = await colleague(at, 'Piotr');
    const access = at.accessOn(0);
    await setTeamMember({ ...access, now: access.now + 1 }, patientId, other, true);
    await setTeamMember({ ...access, now: access.now + 2 }, patientId, access.actorId, false);
    await saveSettings(access, { 'care-team-restriction': 1 }, 'Small rooms');
    expect(await create()).toEqual({
      answer: 'possible-duplicate',
      found: [{ patientId, person: null, signs: [] }],
    });
  });

  it('never looks into another clinic', async () => {
    await addPatient(accessOf(at.store, 'b', 'clinician-b'), { ...person, phone: '020 913 0100' });
    expect(await create({ phone: '020 913 0100' })).toMatchObject({ answer: 'added' });
  });
});

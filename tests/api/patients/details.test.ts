/** Who a patient is and how to reach them: versions, corrections, conflicts, and what rests on the birth date. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { subscribe } from '#data/changed.ts';
import { patientOf } from '#data/patients/people.ts';
import { type CareSetting, careSetting, kneeRequest } from '../episode/setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

interface Change {
  readonly detail: string;
  readonly value: string | null;
  readonly because?: string;
  readonly reason?: string | null;
  readonly seen?: number;
}

const save = (change: Change, day = 0, time = '09:30') =>
  at.clinician(day, time).clinician.people.changeDetails({
    patientId: at.patientId,
    changes: [{ because: 'changed-since', reason: null, seen: 0, ...change }],
  });

const detail = async (name: string) =>
  (await at.clinician(1).clinician.people.details({ patientId: at.patientId })).find(
    (one) => one.detail === name,
  )!;

const rows = (sql: string) => at.store.reader.client.prepare(sql).all() as Record<string, unknown>[];

describe('details of a patient', () => {
  it('keep every version with why, by whom and when; the newest not entered in error is in force', async () => {
    await save({ detail: 'phone', value: '020 913 0100' });
    await save({ detail: 'phone', value: '020 913 0101', seen: 1 }, 0, '10:00');
    const error = { because: 'entered-in-error', reason: 'A digit was wrong' };
    await save({ detail: 'phone', value: '020 913 0110', ...error, seen: 2 }, 0, '11:00');
    const phone = await detail('phone');
    expect(phone).toMatchObject({ value: '020 913 0110', seen: 3 });
    expect(
      phone.versions.map(({ value, because, reason, strikes, byName }) => [
        value,
        because,
        reason,
        strikes,
        byName,
      ]),
    ).toEqual([
      ['020 913 0100', 'changed-since', null, null, 'clinician-a'],
      ['020 913 0101', 'changed-since', null, null, 'clinician-a'],
      ['020 913 0110', 'entered-in-error', 'A digit was wrong', 2, 'clinician-a'],
    ]);
  });

  it('an entry taken back as an error and not replaced leaves what stood before it in force', async () => {
    await save({ detail: 'address', value: '4 Quay Street' });
    await save({ detail: 'address', value: '9 Mill Lane', seen: 1 });
    await save({
      detail: 'address',
      value: null,
      because: 'entered-in-error',
      reason: 'Another patient',
      seen: 2,
    });
    expect((await detail('address')).value).toBe('4 Quay Street');
    await save({ detail: 'address', value: null, seen: 3 });
    expect((await detail('address')).value).toBeNull();
  });

  it('what lists, the record’s head and the file read is what is in force', async () => {
    await save({ detail: 'familyName', value: 'Married', seen: 1 });
    await save({ detail: 'phone', value: '+351 210 000 000' });
    await save({ detail: 'patientNumber', value: 'LG-7' });
    const staff = at.clinician(1).clinician;
    expect(await staff.people.get({ patientId: at.patientId })).toMatchObject({
      familyName: 'Married',
      phone: '+351 210 000 000',
      patientNumber: 'LG-7',
    });
    expect((await staff.people.list()).patients.find(({ id }) => id === at.patientId)?.familyName).toBe(
      'Married',
    );
  });

  it('a colleague’s change in between is a conflict that says whose, and nothing is saved', async () => {
    await save({ detail: 'phone', value: '020 913 0100' });
    const both = at.clinician(0, '10:00').clinician.people.changeDetails({
      patientId: at.patientId,
      changes: [
        { detail: 'email', value: 'a@example.org', because: 'changed-since', reason: null, seen: 0 },
        { detail: 'phone', value: '020 913 0199', because: 'changed-since', reason: null, seen: 0 },
      ],
    });
    await expect(both).rejects.toMatchObject({
      problem: 'conflict',
      message: expect.stringMatching(/“Telephone” was changed by clinician-a .* Nothing was saved/),
    });
    expect((await detail('phone')).value).toBe('020 913 0100');
    expect((await detail('email')).value).toBeNull();
  });

  it('the same value again is no new version', async () => {
    await save({ detail: 'phone', value: '020 913 0100' });
    expect(await save({ detail: 'phone', value: ' 020 913 0100 ', seen: 1 })).toEqual([]);
    expect((await detail('phone')).versions).toHaveLength(1);
  });

  it.each([
    ['a telephone number of 4 digits', { detail: 'phone', value: '0209' }, /5 to 15 digits/],
    ['a telephone number of 16 digits', { detail: 'phone', value: '1234567890123456' }, /5 to 15 digits/],
    ['letters in a telephone number', { detail: 'phone', value: '0209 13 ask' }, /5 to 15 digits/],
    ['an email without a domain', { detail: 'email', value: 'name@' }, /name@example\.org/],
    ['an email with a space', { detail: 'email', value: 'a b@example.org' }, /name@example\.org/],
    ['a name taken away', { detail: 'givenName', value: null, seen: 1 }, /Enter the right “Given name”/],
    ['a day of birth in the future', { detail: 'birthDay', value: '2026-03-03', seen: 1 }, /in the future/],
    ['a day of birth 116 years ago', { detail: 'birthDay', value: '1910-03-02', seen: 1 }, /115 years/],
    [
      'an error without its reason',
      { detail: 'birthDay', value: '1959-06-01', because: 'entered-in-error', seen: 1 },
      /Say why “Day of birth” was entered in error/,
    ],
    [
      'an emergency telephone of nobody',
      { detail: 'emergencyPhone', value: '020 913 0100' },
      /name of the emergency contact/,
    ],
  ])('refuse %s, saying how to put it right, and keep nothing', async (_name, change, reason) => {
    const before = rows('SELECT * FROM patient_detail').length;
    await expect(save(change)).rejects.toThrow(reason);
    expect(rows('SELECT * FROM patient_detail')).toHaveLength(before);
  });

  it.each(['02091', '123456789012345', '+44 (20) 913-0100'])(
    'take the telephone number %s',
    async (value) => {
      await save({ detail: 'phone', value });
      expect((await detail('phone')).value).toBe(value);
    },
  );

  it('are never edited or deleted while the person is known', async () => {
    const { client } = at.store.writer;
    expect(() => client.exec("UPDATE patient_detail SET value = 'x'")).toThrow(/append-only/);
    expect(() => client.exec('DELETE FROM patient_detail')).toThrow(/append-only/);
  });
});

describe('a corrected day of birth', () => {
  const correct = (value: string) =>
    save({ detail: 'birthDay', value, because: 'entered-in-error', reason: 'Year misread', seen: 1 });
  const eligibilities = async () =>
    new Set(
      (await at.clinician(0, '12:00').clinician.screening.outcomes({ patientId: at.patientId })).map(
        ({ eligibility }) => eligibility,
      ),
    );

  it('that shows nobody adult closes every method at once, and a dose is refused', async () => {
    const { patientId } = at;
    // One day under 18 on the clinic's day, 2 March 2026.
    await correct('2008-03-03');
    expect(await eligibilities()).toEqual(new Set(['closed']));
    await expect(
      at.clinician(0, '12:00').clinician.prescriptions.propose({ patientId, request: kneeRequest }),
    ).rejects.toThrow(/Under 18/);
  });

  it('that shows 18 today closes nothing', async () => {
    const before = await eligibilities();
    await correct('2008-03-02');
    expect(await eligibilities()).toEqual(before);
  });

  it('has what rests on the record looked at again within the same write', async () => {
    const heard: string[] = [];

    subscribe(at.store, {
      name: 'heard',
      patientChanged: async (access, id) => {
        heard.push((await patientOf(access, id))!.birthDay);
      },
      clinicChanged: async () => undefined,
    });
    await correct('1960-06-01');
    expect(heard).toEqual(['1960-06-01']);
  });
});

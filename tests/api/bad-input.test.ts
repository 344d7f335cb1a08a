import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Problem } from '#api/errors.ts';
import type { Store } from '#data/database/store.ts';
import { measurement, trainingSession } from '#data/schema/schema.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, type Setting, sessionEntry, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
});
afterAll(() => store.close());

const problemOf = async (call: Promise<unknown>): Promise<Problem> => {
  try {
    await call;
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('The call went through.');
};

const staff = () => asClinician(setting.clinician).clinician;
const record = (value: object, confirmed = false) =>
  staff().measurements.record({
    patientId: setting.patientId,
    measurement: { day: '2026-03-02', ...value },
    confirmed,
  });

describe('impossible values are refused on the server, with what is wrong, where, and how to put it right', () => {
  it.each([
    ['a body mass of 0', { kind: 'body-mass', massKg: 0 }, 'input.massKg', 'too-low'],
    ['a body mass of 24.9 kg', { kind: 'body-mass', massKg: 24.9 }, 'input.massKg', 'too-low'],
    ['a body mass of 350.1 kg', { kind: 'body-mass', massKg: 350.1 }, 'input.massKg', 'too-high'],
    [
      'a diastolic pressure above the systolic',
      { kind: 'blood-pressure', systolicMmhg: 80, diastolicMmhg: 120, position: 'seated' },
      'input.diastolicMmhg',
      'inconsistent',
    ],
    [
      'a diastolic pressure equal to the systolic',
      { kind: 'blood-pressure', systolicMmhg: 120, diastolicMmhg: 120, position: 'seated' },
      'input.diastolicMmhg',
      'inconsistent',
    ],
    [
      'a day in the future',
      { kind: 'stature', statureCm: 170, day: '2026-03-03' },
      'input.day',
      'inconsistent',
    ],
    [
      'a day that does not exist',
      { kind: 'stature', statureCm: 170, day: '2026-02-30' },
      'input.day',
      'wrong-type',
    ],
    [
      'a pressure on the trunk',
      {
        kind: 'limb-occlusion-pressure',
        limb: 'trunk',
        side: 'left',
        cuffWidthCm: 11,
        position: 'seated',
        method: 'doppler',
        firstMmhg: 180,
        secondMmhg: 180,
      },
      'input.limb',
      'not-listed',
    ],
    ['a word for a number', { kind: 'stature', statureCm: 'tall' }, 'input.statureCm', 'wrong-type'],
    ['a missing figure', { kind: 'stature' }, 'input.statureCm', 'missing'],
    [
      'a field nobody asked for',
      { kind: 'stature', statureCm: 170, colour: 'blue' },
      'input.colour',
      'unknown-field',
    ],
  ])('refuses %s', async (_title, value, field, code) => {
    const problem = await problemOf(record(value));
    expect(problem.refusals.map((refusal) => [refusal.field, refusal.code])).toContainEqual([field, code]);
    expect(problem.refusals.every((refusal) => refusal.reason.length > 15)).toBe(true);
  });

  it('leaves nothing behind of what it refused', async () => {
    const before = (await store.read.select().from(measurement)).length;
    await problemOf(record({ kind: 'body-mass', massKg: 0 }));
    expect((await store.read.select().from(measurement)).length).toBe(before);
  });

  it('asks about an unlikely value, keeps nothing, and keeps it once it is confirmed', async () => {
    const problem = await problemOf(record({ kind: 'body-mass', massKg: 38 }));
    expect([problem.problem, problem.questions.length]).toEqual(['not-confirmed', 1]);
    await record({ kind: 'body-mass', massKg: 38 }, true);
    const rows = await staff().measurements.list({ patientId: setting.patientId });
    expect(rows.map((row) => row.kind === 'body-mass' && [row.massKg, row.confirmed])).toEqual([[38, true]]);
  });

  it('does not let a confirmation carry an impossible value', async () => {
    const problem = await problemOf(
      record({ kind: 'blood-pressure', systolicMmhg: 80, diastolicMmhg: 120, position: 'seated' }, true),
    );
    expect(problem.problem).toBe('refused');
  });

  it.each([
    ['a pain of 11', { painBefore: 11 }],
    ['a pain of −1', { painBefore: -1 }],
    ['a pain of 3.5', { painBefore: 3.5 }],
    ['an empty text for a pain', { painBefore: '' }],
  ])('refuses %s in a session and stores nothing', async (_title, over) => {
    const patient = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
    const joint = {
      joint: 'right-knee',
      painBefore: 1,
      painDuring: 1,
      painAfter: 1,
      twoHoursState: 'asked',
      muscleBurn: null,
      cuffDiscomfort: null,
      gaveWay: false,
    };
    const entry = { ...sessionEntry({ entryId: 'bad' }), joints: [{ ...joint, ...over }] };
    const problem = await problemOf(patient.patient.entries.send({ kind: 'session', entry }));
    expect(problem.refusals[0]?.field).toBe('input.joints[0].painBefore');
    expect(await store.read.select().from(trainingSession)).toEqual([]);
  });

  it.each([
    ['a load of −3 kg', { loadKg: -3 }, 'input.sets[0].loadKg'],
    ['half a repetition', { repetitions: 10.5 }, 'input.sets[0].repetitions'],
  ])('refuses %s', async (_title, over, field) => {
    const patient = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
    const set = {
      prescriptionId: 'p',
      itemId: 'l',
      set: 1,
      repetitions: 10,
      loadKg: 3,
      reserve: 1,
      stopReason: 'none',
      ...over,
    };
    const entry = { ...sessionEntry({ entryId: 'bad' }), sets: [set] };
    const problem = await problemOf(patient.patient.entries.send({ kind: 'session', entry }));
    expect(problem.refusals[0]?.field).toBe(field);
  });

  it('refuses an unknown warning sign and an unknown zone', async () => {
    const patient = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
    const flag = await problemOf(
      patient.patient.entries.send({
        kind: 'session',
        entry: { ...sessionEntry({ entryId: 'bad' }), redFlags: ['hiccups'] },
      }),
    );
    expect(flag.refusals[0]?.code).toBe('not-listed');
    const zone = await problemOf(
      patient.patient.entries.send({
        kind: 'session',
        entry: { ...sessionEntry({ entryId: 'bad' }), zone: 'Mars/Olympus' },
      }),
    );
    expect(zone.message).toMatch(/time zone/);
  });

  it('refuses a patient of 17 years and takes one of 18', async () => {
    const person = { givenName: 'A', familyName: 'B', phone: null };
    const young = await problemOf(staff().people.create({ patient: { ...person, birthDay: '2008-03-03' } }));
    expect(young.refusals[0]).toMatchObject({
      field: 'input.birthDay',
      reason: expect.stringMatching(/17.*adults/),
    });
    expect(await staff().people.create({ patient: { ...person, birthDay: '2008-03-02' } })).toMatchObject({
      answer: 'added',
    });
  });

  it('refuses occlusion on the trunk and on both limbs at once', async () => {
    const request = {
      method: 'occlusion',
      exerciseId: 'knee-extension-seated',
      limb: 'trunk',
      side: 'right',
      schemeId: 'thirty-then-fifteens',
      cuffKind: 'elastic-wrap',
      tightness: 7,
      loadKg: 2,
      secondsPerRepetition: 4,
      restSeconds: 30,
      sessionsPerWeek: 2,
      supervised: true,
    };
    const trunk = await problemOf(staff().prescriptions.propose({ patientId: setting.patientId, request }));
    expect(trunk.message).toMatch(/arms and legs only/);
    const both = await problemOf(
      staff().prescriptions.propose({
        patientId: setting.patientId,
        request: { ...request, limb: 'leg', side: 'both' },
      }),
    );
    expect(both.message).toMatch(/One limb at a time/);
  });

  it.each(['constructor', 'toString', '__proto__', 'hasOwnProperty', 'isometric', 7, null])(
    'refuses a method it does not have, whatever it is called (%j), and names those it has',
    async (method) => {
      const request = { method, exerciseId: 'knee-extension-seated', side: 'right' };
      const problem = await problemOf(
        staff().prescriptions.propose({ patientId: setting.patientId, request }),
      );
      expect([problem.problem, problem.message]).toEqual([
        'refused',
        'Choose a method: variation, low load or occlusion.',
      ]);
    },
  );

  it('refuses an override without a reason, without a word, or past 28 days', async () => {
    const response = { decisionId: 'x', kind: 'override', decision: null, reason: ' ', until: '2026-03-31' };
    const problem = await problemOf(staff().review.respond({ patientId: setting.patientId, response }));
    expect(problem.refusals.map((refusal) => refusal.field).sort()).toEqual([
      'input.decision',
      'input.reason',
      'input.until',
    ]);
  });
});

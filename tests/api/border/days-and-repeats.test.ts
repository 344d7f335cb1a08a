/** Days of an entry, ids of a week and repeats of an entry: bounded at the border, and nothing is lost by it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Problem } from '#api/errors.ts';
import type { Store } from '#data/database/store.ts';
import { takeMorning, takeSession, takeTwoHours } from '#data/entries/take-entry.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import {
  accessOf,
  morningEntry,
  type Setting,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
  zone,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
let itemId: string;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  ({ itemId } = await signedExercise(setting.clinician, setting.patientId));
});
afterEach(() => store.close());

const problemOf = (call: Promise<unknown>): Promise<Problem> =>
  call.then(
    () => Promise.reject(new Error('It was taken.')),
    (error: Problem) => error,
  );

describe('the day of an entry', () => {
  it.each(['0001-01-01', '1899-12-31', '2200-01-01', '9999-12-31'])(
    'outside the years in which anybody here lives is refused, with what to do: %s',
    async (day) => {
      const patient = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
      const entry = morningEntry({ entryId: 'far', day });
      const problem = await problemOf(patient.patient.entries.send({ kind: 'morning', entry }));
      expect(problem).toMatchObject({ problem: 'refused', refusals: [{ field: 'input.day' }] });
    },
  );

  // The clinic's day is 2026-03-02.
  it.each([
    ['2026-02-27', true],
    ['2026-03-01', false],
    ['2026-03-02', false],
    ['2026-03-03', false],
    ['2026-03-04', true],
    ['2027-03-02', true],
  ])(
    'that is not the day of its answers is doubted from two days on, and stored: %s',
    async (day, doubtful) => {
      const { clinician, patientId } = setting;
      const morning = await takeMorning(clinician, patientId, morningEntry({ entryId: `m ${day}`, day }));
      const session = await takeSession(clinician, patientId, sessionEntry({ entryId: `s ${day}`, day }));
      expect([morning, session]).toMatchObject([
        { kind: 'stored', clockDoubtful: doubtful },
        { kind: 'stored', clockDoubtful: doubtful },
      ]);
    },
  );

  it('of an answer two hours later may lie long before it was sent', async () => {
    const { clinician, patientId } = setting;
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'e1' }));
    const later = accessOf(store, 'a', 'clinician-a', start + 5 * 86_400_000);
    const answer = {
      ...{ format: 1, entryId: 't1', day: clinician.day, zone, sentAt: later.now, redFlags: [] },
      ...{ extraPainRelief: null, sessionEntryId: 'e1', joint: 'right-knee' as const, pain: 4 },
    };
    expect(await takeTwoHours(later, patientId, answer)).toMatchObject({
      kind: 'stored',
      clockDoubtful: false,
    });
  });
});

describe('an entry sent again with other content', () => {
  const conflicts = () =>
    (store.reader.client.prepare('SELECT count(*) AS n FROM entry_conflict').get() as { n: number }).n;
  const send = (fatigue: number, minute = 0) =>
    takeMorning(
      setting.clinician,
      setting.patientId,
      morningEntry({ entryId: 'm1', fatigue, fatigueState: 'asked', answeredAt: start - minute * 1000 }),
    );

  it('is kept once however often the same comes, and at most ten times in other shapes', async () => {
    await send(0);
    for (let repeat = 0; repeat < 5; repeat += 1) expect((await send(1)).kind).toBe('conflict');
    expect(conflicts()).toBe(1);
    for (let shape = 2; shape <= 9; shape += 1) await send(shape);
    expect(conflicts()).toBe(9);
    for (let shape = 1; shape <= 30; shape += 1) expect((await send(9, shape)).kind).toBe('conflict');
    expect(conflicts()).toBe(10);
  });
});

describe('a week', () => {
  const save = (line: string) =>
    asClinician(setting.clinician).clinician.prescriptions.saveProgramme({
      patientId: setting.patientId,
      programme: { lines: [{ itemId: line, weekdays: [1, 3] }] },
    });

  it('names exercises of this patient only: one of another patient or clinic, or of nobody, is refused', async () => {
    const other = await signedExercise(setting.clinician, setting.otherPatientId);
    const stranger = await signedExercise(setting.stranger, setting.strangerPatientId);
    for (const line of [other.itemId, stranger.itemId, 'nobody']) {
      expect(await problemOf(save(line))).toMatchObject({
        problem: 'refused',
        message: expect.stringMatching(/never prescribed to this patient/),
      });
    }
    expect(store.reader.client.prepare('SELECT id FROM programme').all()).toEqual([]);
    expect(await save(itemId)).toBe(1);
  });
});

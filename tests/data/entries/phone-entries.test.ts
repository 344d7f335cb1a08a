/** What this release's entries add: gaps after the work, something new, who typed, a morning given late. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { screeningSheetVersion } from '#core/screening/items.ts';
import type { Store } from '#data/database/store.ts';
import { takeMorning, takeSession } from '#data/entries/take-entry.ts';
import { recordOf } from '#data/patients/record.ts';
import { morning, trainingSession, worklistItem } from '#data/schema/schema.ts';
import { recordScreening } from '#data/screening/screenings.ts';
import { handleWorklistItem } from '#data/worklist/handle-worklist-item.ts';
import { rebuildWorklist } from '#data/worklist/worklist-items.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import {
  accessOf,
  morningEntry,
  type Setting,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const dayMs = 86_400_000;
const joint = (over: object = {}) => ({
  joint: 'right-knee' as const,
  painBefore: 2,
  painDuring: 3,
  painAfter: 2,
  twoHoursState: 'not-applicable' as const,
  muscleBurn: null,
  cuffDiscomfort: null,
  gaveWay: false,
  ...over,
});

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
});
afterEach(() => store.close());

const told = async () =>
  (await store.read.select().from(worklistItem)).filter((row) => row.kind === 'reported-new');

describe('questions after the work', () => {
  it('left open stay open in the record; an answer stays an answer', async () => {
    const { clinician, patientId } = setting;
    const open = { entryId: 'open', didExtra: null, joints: [joint({ gaveWay: null })] };
    await takeSession(clinician, patientId, sessionEntry(open));
    const said = { entryId: 'said', beganAt: start - 1000, joints: [joint()] };
    await takeSession(clinician, patientId, sessionEntry(said));
    const sessions = (await recordOf(clinician, patientId))?.sessions ?? [];
    expect(sessions.map((one) => [one.didExtra, one.joints[0]?.gaveWay])).toEqual([
      [null, null],
      [false, false],
    ]);
  });

  it('an entry of the format before, without the new fields, is taken as it was', async () => {
    const { patientId } = setting;
    const api = asPatient(accessOf(store, 'a', 'patient'), patientId);
    const entry = { ...sessionEntry({ entryId: 'old', joints: [joint()] }), format: 1 };
    expect(await api.patient.entries.send({ kind: 'session', entry })).toMatchObject({ stored: 'stored' });
    const [row] = await store.read.select().from(trainingSession);
    expect(row).toMatchObject({ format: 1, news: null, otherJointWorse: null, reportedNew: false });
  });
});

describe('something new since last time', () => {
  it.each([
    [{ news: ['medicine', 'fall'] as const }, 'medicine, fall', ''],
    [{ otherJointWorse: true }, '', 'worse'],
  ])('puts the patient on the worklist: %j', async (answer, news, otherJoint) => {
    const { clinician, patientId } = setting;
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'e', ...answer, joints: [joint()] }));
    expect((await told()).map((row) => row.facts)).toEqual([{ news, otherJoint }]);
    await rebuildWorklist(clinician);
    expect((await told()).map((row) => row.facts)).toEqual([{ news, otherJoint }]);
  });

  it.each([[{ news: [] }], [{ news: null }], [{ otherJointWorse: false }], [{ otherJointWorse: null }]])(
    'answered as %j puts nobody there',
    async (answer) => {
      const { clinician, patientId } = setting;
      await takeSession(clinician, patientId, sessionEntry({ entryId: 'e', ...answer }));
      expect(await told()).toEqual([]);
    },
  );

  it('is settled by acknowledging it, or by asking the screening again', async () => {
    const { clinician, patientId } = setting;
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'e', news: ['fall'] }));
    await handleWorklistItem(clinician, patientId, {
      key: 'reported-new',
      act: 'acknowledge',
      until: null,
      assignee: null,
      reason: 'rang her',
    });
    expect(await told()).toEqual([]);
    const later = { ...clinician, now: start + 1000 };
    await takeSession(later, patientId, sessionEntry({ entryId: 'f', news: ['skin'] }));
    expect(await told()).toHaveLength(1);
    await recordScreening({ ...clinician, now: start + 2000 }, patientId, {
      sheetVersion: screeningSheetVersion,
      answers: [],
    });
    expect(await told()).toEqual([]);
  });
});

describe('who typed an entry', () => {
  it('is kept with it: a carer on the patient’s phone', async () => {
    const { patientId } = setting;
    const api = asPatient(accessOf(store, 'a', 'patient'), patientId);
    const entry = { ...morningEntry({ entryId: 'm' }), enteredAs: 'relative' };
    await api.patient.entries.send({ kind: 'morning', entry });
    expect((await store.read.select().from(morning))[0]).toMatchObject({
      enteredAs: 'relative',
      enteredBy: 'patient',
    });
  });

  it('the clinic from paper, by name and under the same rules', async () => {
    const { clinician, patientId } = setting;
    const { clinician: staff } = asClinician(clinician);
    const { entryId, redFlags, extraPainRelief, fatigue, fatigueState, joints } = morningEntry({
      entryId: 'p',
    });
    const answers = { entryId, redFlags, extraPainRelief, fatigue, fatigueState, joints };
    const sent = {
      patientId,
      kind: 'morning' as const,
      enteredAs: 'clinic-from-paper' as const,
      day: clinician.day,
    };
    expect(await staff.entries.send({ ...sent, answers })).toMatchObject({
      stored: 'stored',
      clockDoubtful: false,
    });
    expect(await staff.entries.send({ ...sent, answers })).toMatchObject({ stored: 'known' });
    expect((await store.read.select().from(morning)).map((row) => [row.enteredAs, row.enteredBy])).toEqual([
      ['clinic-from-paper', 'clinician-a'],
    ]);
    await expect(
      staff.entries.send({ ...sent, answers: { ...answers, entryId: 'q', joints: 3 } }),
    ).rejects.toThrow();
    await expect(staff.entries.send({ ...sent, day: '2026-03-03', answers })).rejects.toThrow(
      /today or an earlier day/,
    );
  });

  it('a phone cannot say that the clinic typed it', async () => {
    const api = asPatient(accessOf(store, 'a', 'patient'), setting.patientId);
    const entry = { ...morningEntry({ entryId: 'm' }), enteredAs: 'clinic-from-paper' };
    await expect(api.patient.entries.send({ kind: 'morning', entry })).rejects.toThrow(
      /cannot use this page/,
    );
  });
});

describe('a morning check', () => {
  const given = async (daysLate: number, sentLater = 0) => {
    const { clinician, patientId } = setting;
    const now = start + daysLate * dayMs;
    const entry = morningEntry({ entryId: `late-${daysLate}`, answeredAt: now, sentAt: now + sentLater });
    await takeMorning({ ...clinician, now: now + sentLater }, patientId, entry);
    const [row] = await store.read.select().from(morning);
    const [read] = (await recordOf({ ...clinician, now: now + sentLater }, patientId))?.mornings ?? [];
    return { late: row?.late, minute: read?.localMinute };
  };

  // The clinic's default takes one day; the scores of a later one count as missing, kept and shown.
  it.each([
    [0, { late: false, minute: 540 }],
    [1, { late: true, minute: undefined }],
    [2, { late: true, minute: -1 }],
  ])('given %i days late', async (days, expected) => {
    expect(await given(days)).toEqual(expected);
  });

  it('that waited two days for a signal is not late', async () => {
    expect(await given(0, 2 * dayMs)).toMatchObject({ late: false });
  });
});

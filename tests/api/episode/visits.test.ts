/** Appointments at a distance, answers before a visit, drafts and the first visit. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { itemsAskedAt, screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { addPatient } from '#data/patients/people.ts';
import { screening } from '#data/schema/schema.ts';
import { type CareSetting, careSetting, firstDay, worklistItemsOf } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const kindsOn = async (day: number) => (await worklistItemsOf(at, day)).map(({ kind }) => kind);

describe('an appointment at a distance', () => {
  const remote = {
    place: 'video',
    whereabouts: 'Kitchen table',
    callBackPhone: '020 913 0100',
    present: ['Son'],
  };

  it('locks tests that need hands, for the one who holds it and that day only', async () => {
    const { patientId } = at;
    const test = (day: number) =>
      at.clinician(day).clinician.measurements.recordEffusion({
        patientId,
        effusion: { joint: 'right-knee', grade: 'zero' },
      });
    await at.clinician().clinician.visits.begin({ patientId, visit: remote });
    await expect(test(0)).rejects.toThrow(/by video; this is a hands-on test/);
    const circumference = {
      kind: 'limb-circumference',
      day: firstDay,
      limb: 'leg',
      side: 'right',
      site: 'mid-thigh',
      circumferenceCm: 50,
    };
    await expect(
      at.clinician().clinician.measurements.record({ patientId, measurement: circumference }),
    ).rejects.toThrow(/hands-on test/);
    const bodyMass = { kind: 'body-mass', day: firstDay, massKg: 70 };
    await expect(
      at.clinician().clinician.measurements.record({ patientId, measurement: bodyMass }),
    ).resolves.toBeDefined();
    await expect(test(1)).resolves.toBeDefined();
  });

  it('records place, call-back number and who is present, and is refused without them', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    await expect(
      staff.visits.begin({ patientId, visit: { ...remote, callBackPhone: null } }),
    ).rejects.toThrow(/number to ring/);
    await staff.visits.begin({ patientId, visit: remote });
    expect((await staff.visits.list({ patientId })).now).toMatchObject(remote);
  });

  it('is not the place of a first session with a cuff unless a clinician says why', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    await staff.visits.begin({ patientId, visit: remote });
    const session = {
      limb: 'leg',
      side: 'right',
      day: firstDay,
      supervisedThroughout: true,
      remoteReason: null,
      remark: null,
    };
    await expect(staff.visits.watch({ patientId, session })).rejects.toThrow(/cuff remotely/);
    await staff.visits.watch({
      patientId,
      session: { ...session, remoteReason: 'Island; nurse beside her.' },
    });
    await expect(staff.visits.watch({ patientId, session })).resolves.toBeDefined();
  });
});

describe('questions before a visit', () => {
  const answers = (over: Readonly<Record<string, string>> = {}) =>
    screeningItems.map(({ id }) => ({ item: id, answer: over[id] ?? 'no' }));

  it('tell the patient what is asked and never what an answer closes', async () => {
    const { questions } = await at.patient().patient.preVisit.questions();
    expect(questions).toHaveLength(itemsAskedAt(67).length);
    expect(JSON.stringify(questions)).not.toMatch(/effects|opening|closed|minimumFor/);
  });

  it('are no screening until a clinician confirms; only yes, not known and changed are shown', async () => {
    const { patientId } = at;
    await at.patient(1).patient.preVisit.send({ answers: answers({ diabetes: 'yes', cancer: 'not-known' }) });
    expect(await at.store.read.select().from(screening)).toHaveLength(1);
    expect(await kindsOn(1)).toContain('pre-visit-answers');
    const shown = await at.clinician(1).clinician.preVisits.get({ patientId });
    expect(shown!.toLookAt.map(({ item }) => item.id)).toEqual(['cancer', 'diabetes']);
    expect(shown!.plainNo).toBe(screeningItems.length - 2);
    const corrections = [{ item: 'cancer', answer: 'no' }];
    await at
      .clinician(1, '10:00')
      .clinician.preVisits.confirm({ patientId, preVisitId: shown!.id, corrections });
    const sheet = await at.clinician(1).clinician.screening.sheet({ patientId });
    const given = new Map(sheet.newest!.answers.map((one) => [one.item, one.answer]));
    expect([given.get('diabetes'), given.get('cancer')]).toEqual(['yes', 'no']);
    expect(await kindsOn(1)).not.toContain('pre-visit-answers');
    expect((await at.clinician(1).clinician.preVisits.get({ patientId }))!.isConfirmed).toBe(true);
  });

  it('sent again meanwhile are looked at anew, and an unknown or doubled item is refused', async () => {
    const { patientId } = at;
    await at.patient(1).patient.preVisit.send({ answers: answers() });
    const shown = await at.clinician(1).clinician.preVisits.get({ patientId });
    await at.patient(1, '10:00').patient.preVisit.send({ answers: answers({ diabetes: 'yes' }) });
    await expect(
      at.clinician(1).clinician.preVisits.confirm({ patientId, preVisitId: shown!.id, corrections: [] }),
    ).rejects.toThrow(/newer answers/);
    await expect(
      at.patient(1).patient.preVisit.send({ answers: [{ item: 'nothing', answer: 'no' }] }),
    ).rejects.toThrow(/not on the sheet/);
    await expect(
      at.patient(1).patient.preVisit.send({ answers: [...answers(), { item: 'diabetes', answer: 'yes' }] }),
    ).rejects.toThrow(/answered twice/);
  });
});

describe('unfinished work', () => {
  it('is kept for the person who began it, on that form of that patient, until it is dropped', async () => {
    const { patientId } = at;
    const { clinician: staff } = at.clinician();
    await staff.drafts.save({ patientId, form: 'first-visit', typed: { diagnosis: 'Kn' } });
    await staff.drafts.save({ patientId, form: 'first-visit', typed: { diagnosis: 'Knee' } });
    expect((await staff.drafts.get({ patientId, form: 'first-visit' }))?.typed).toEqual({
      diagnosis: 'Knee',
    });
    expect(await staff.drafts.get({ patientId, form: 'pre-visit' })).toBeNull();
    await staff.drafts.drop({ patientId, form: 'first-visit' });
    expect(await staff.drafts.get({ patientId, form: 'first-visit' })).toBeNull();
  });
});

describe('a first visit', () => {
  const visit = (over: object = {}) => ({
    profile: {
      diagnosis: 'Knee osteoarthritis',
      inflammatoryArthritis: false,
      followedJoints: ['right-knee'],
      ownedLoadsKg: [1, 2, 3, 4],
      formulaSex: null,
    },
    screening: {
      sheetVersion: screeningSheetVersion,
      answers: minimumSet('low-load', 67).map(({ id }) => ({ item: id, answer: 'no' })),
    },
    pressure: { systolicMmhg: 128, diastolicMmhg: 78 },
    test: { loadKg: 8, repetitions: 10 },
    request: { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' },
    goal: 'Get up from the floor',
    ...over,
  });
  let empty: string;
  beforeEach(async () => {
    const person = { givenName: 'New', familyName: 'Person', birthDay: '1961-04-04', phone: null };
    empty = await addPatient(at.accessOn(0), person);
  });

  it('goes from an empty patient to a signed low-load exercise, with occlusion still closed', async () => {
    const { clinician: staff } = at.clinician();
    const patientId = empty;
    const kept = await staff.visits.saveFirstVisit({ patientId, visit: visit() });
    expect(kept.dose).toMatchObject({ method: 'low-load', loadKg: 3 });
    await staff.prescriptions.sign({ patientId, prescriptionId: kept.prescriptionId });
    const { inForce } = await staff.prescriptions.list({ patientId });
    expect(inForce).toHaveLength(1);
    const outcomes = await staff.screening.outcomes({ patientId });
    const eligibilities = (method: string) => [
      ...new Set(outcomes.filter((one) => one.method === method).map(({ eligibility }) => eligibility)),
    ];
    expect(eligibilities('low-load')).toEqual(['open-with-precautions']);
    expect(eligibilities('occlusion')).toEqual(['closed']);
    const { episodes } = await staff.episodes.list({ patientId });
    expect(episodes.map((one) => [one.goals, one.changes.map(({ to }) => to)])).toEqual([
      [['Get up from the floor'], ['open', 'active']],
    ]);
  });

  it('keeps all or nothing: one item of the minimum missing, and no row is left behind', async () => {
    const { clinician: staff } = at.clinician();
    const patientId = empty;
    const answers = visit().screening.answers.slice(1);
    await expect(
      staff.visits.saveFirstVisit({
        patientId,
        visit: visit({ screening: { ...visit().screening, answers } }),
      }),
    ).rejects.toThrow(/Not asked yet, and needed/);
    expect((await staff.people.get({ patientId })).profile).toBeNull();
    expect(await staff.screening.list({ patientId })).toEqual([]);
    expect(await staff.measurements.list({ patientId })).toEqual([]);
    expect((await staff.episodes.list({ patientId })).episodes).toEqual([]);
  });

  it.each([
    ['180 systolic', { systolicMmhg: 180, diastolicMmhg: 80 }, /all resistance work is held/],
    ['diastolic above systolic', { systolicMmhg: 100, diastolicMmhg: 110 }, /diastolic|systolic/i],
  ])('refuses with %s', async (_name, pressure, reason) => {
    await expect(
      at.clinician().clinician.visits.saveFirstVisit({ patientId: empty, visit: visit({ pressure }) }),
    ).rejects.toThrow(reason);
  });

  it('takes a maximum already known instead of a test, and a second visit opens no second episode of care', async () => {
    const { clinician: staff } = at.clinician();
    const patientId = empty;
    const known = { ...visit().request, knownOneRepMaxKg: 10 };
    await staff.visits.saveFirstVisit({ patientId, visit: visit({ test: null, request: known }) });
    await at
      .clinician(7)
      .clinician.visits.saveFirstVisit({ patientId, visit: visit({ test: null, request: known }) });
    expect((await staff.episodes.list({ patientId })).episodes).toHaveLength(1);
  });

  it('shows previous values and the draft beside the fields', async () => {
    const { clinician: staff } = at.clinician();
    const patientId = empty;
    await staff.visits.saveFirstVisit({ patientId, visit: visit() });
    await staff.drafts.save({ patientId, form: 'first-visit', typed: { loads: '1 2' } });
    const page = await staff.visits.firstVisit({ patientId });
    expect(page.profile?.diagnosis).toBe('Knee osteoarthritis');
    expect(page.measurements.map(({ kind }) => kind).sort()).toEqual([
      'blood-pressure',
      'repetitions-to-failure',
    ]);
    expect(page.draft?.typed).toEqual({ loads: '1 2' });
    expect(page.items.map(({ id }) => id)).toEqual(minimumSet('low-load', 67).map(({ id }) => id));
  });
});

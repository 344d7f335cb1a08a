/** Appointments at a distance, answers before a visit and drafts. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { itemsAskedAt, screeningItems } from '#core/screening/items.ts';
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
    await staff.drafts.save({ patientId, form: 'first-visit-reason', typed: { diagnosis: 'Kn' } });
    await staff.drafts.save({ patientId, form: 'first-visit-reason', typed: { diagnosis: 'Knee' } });
    expect((await staff.drafts.get({ patientId, form: 'first-visit-reason' }))?.typed).toEqual({
      diagnosis: 'Knee',
    });
    expect(await staff.drafts.get({ patientId, form: 'pre-visit' })).toBeNull();
    await staff.drafts.drop({ patientId, form: 'first-visit-reason' });
    expect(await staff.drafts.get({ patientId, form: 'first-visit-reason' })).toBeNull();
  });
});

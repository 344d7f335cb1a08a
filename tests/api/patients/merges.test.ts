/** Two records of one person: one is shown, nothing is copied, and nobody signs before a plan is chosen. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { mergedWith } from '#data/patients/merges.ts';
import { addPatient } from '#data/patients/people.ts';
import { usablePreApprovals } from '#data/prescribing/usable-pre-approvals.ts';
import { accessOf, signedExercise } from '#tests/support/clinic.ts';
import { type CareSetting, careSetting, colleague, kneeRequest } from '../episode/setting.ts';

let at: CareSetting;
let otherId: string;
beforeEach(async () => {
  at = await careSetting();
  const twice = { givenName: 'Tset', familyName: 'Person', birthDay: '1958-06-01', phone: '020 913 0100' };
  otherId = await addPatient(at.accessOn(0), twice);
  await signedExercise(at.accessOn(0), otherId);
});
afterEach(() => at.store.close());

const reason = 'Registered twice at the desk.';
const staff = (time = '10:00') => at.clinician(0, time).clinician;
const merge = () => staff().merges.merge({ patientId: at.patientId, otherId, reason });
const choose = (keptId: string, time = '11:00') =>
  staff(time).merges.choosePlan({ patientId: at.patientId, keptId, reason });
const rows = (sql: string) => at.store.reader.client.prepare(sql).all() as Record<string, unknown>[];
const inForce = async (patientId: string) =>
  (await staff('18:00').prescriptions.list({ patientId })).inForce.length;
const draft = async (patientId: string, time = '12:00') => {
  const prescriptionId = await staff(time).prescriptions.saveDraft({ patientId, request: kneeRequest });
  return () => staff(time).prescriptions.sign({ patientId, prescriptionId, replace: true });
};

describe('two merged records', () => {
  it('are one in lists and in the question about duplicates, and say who merged them and why', async () => {
    await merge();
    const listed = (await staff().people.list()).patients.map(({ id }) => id);
    expect(listed).toContain(at.patientId);
    expect(listed).not.toContain(otherId);
    const asked = await staff().people.create({
      patient: { givenName: 'New', familyName: 'Name', birthDay: '1990-01-01', phone: '020 913 0100' },
    });
    expect(asked).toMatchObject({
      answer: 'possible-duplicate',
      found: [{ patientId: at.patientId, signs: ['phone'] }],
    });
    const link = { patientId: otherId, intoId: at.patientId, reason, byName: 'clinician-a', keptId: null };
    expect(await staff().people.get({ patientId: otherId })).toMatchObject({ mergedInto: link });
    expect(await staff().people.get({ patientId: at.patientId })).toMatchObject({
      mergedInto: null,
      merges: [link],
      isPlanOpen: true,
    });
  });

  it('name each other for whoever judges the person, in both directions and among several', async () => {
    const access = at.accessOn(0);
    const third = await addPatient(access, { givenName: 'T', familyName: 'P', birthDay: '1958-06-01' });
    expect(await mergedWith(access, at.patientId)).toEqual([]);
    await merge();
    await staff('10:30').merges.merge({ patientId: at.patientId, otherId: third, reason });
    expect([...(await mergedWith(access, at.patientId))].sort()).toEqual([otherId, third].sort());
    expect([...(await mergedWith(access, otherId))].sort()).toEqual([at.patientId, third].sort());
  });

  it('open nothing of each other: an entry of kind “none” ends limits of its own record alone', async () => {
    const enter = (patientId: string, over: object) => {
      const none = { kind: 'none', limitKg: null, movement: null, fromDegrees: null, toDegrees: null };
      const limit = { joint: 'right-knee', ...none, to: null, author: 'Dr Surgeon', remark: null, ...over };
      return at.clinician(3).clinician.care.addLimit({ patientId, limit });
    };
    await enter(otherId, { from: '2026-03-04' });
    await enter(at.patientId, { kind: 'load-limit', limitKg: 3, from: '2026-03-02' });
    await merge();
    await choose(at.patientId);
    const codes = async () => {
      const { plan } = await at.clinician(3).clinician.danger.get({ patientId: at.patientId });
      return plan.items.flatMap(({ reasons }) => reasons.map(({ code }) => code));
    };
    expect(await codes()).toEqual(['limit-load']);
    await enter(otherId, { kind: 'no-impact', from: '2026-03-05' });
    const { exercises } = await at.clinician(4).clinician.papers.plan({ patientId: at.patientId });
    expect(JSON.stringify(exercises.map(({ cautions }) => cautions))).toMatch(
      /a limit for your right knee: (?!load|a load)/,
    );
    await enter(otherId, { from: '2026-03-06' });
    await enter(at.patientId, { from: '2026-03-05' });
    expect(await codes()).toEqual([]);
  });

  it('are both bound by a phase of either, which is ended where it stands', async () => {
    const { protocols, danger } = at.clinician(1).clinician;
    const knee = {
      joint: 'right-knee',
      procedure: 'Knee replacement',
      on: '2026-03-02',
      author: 'Dr Surgeon',
    };
    const protocol = { ...knee, letter: null };
    const protocolId = await protocols.begin({ patientId: otherId, protocol });
    const range = { movement: null, fromDegrees: null, toDegrees: null };
    const methods = { lowLoad: true, variation: true, occlusion: false };
    const bound = { weightBearing: 'none', bearKg: null, limitKg: 3, ...range, ...methods };
    const phase = { place: 1, name: 'Protected', from: '2026-03-02', ...bound };
    await protocols.writePhase({ patientId: otherId, protocolId, phase });
    await merge();
    await choose(at.patientId);
    const codes = async () =>
      (await danger.get({ patientId: at.patientId })).plan.items.flatMap(({ reasons }) =>
        reasons.map(({ code }) => code),
      );
    expect(await codes()).toEqual(['limit-load']);
    await expect(protocols.begin({ patientId: otherId, protocol })).rejects.toThrow(/merged into another/);
    await protocols.end({ patientId: otherId, protocolId, end: { reason: 'Surgeon closed it.' } });
    expect(await codes()).toEqual([]);
  });

  it('hold each other’s exercises back until a plan is chosen: the stricter of both stands', async () => {
    const todayOf = async (time: string) => {
      const { plan } = await staff(time).danger.get({ patientId: at.patientId });
      return plan.items.map(({ today }) => today);
    };
    expect(await todayOf('09:30')).toEqual(['as-planned']);
    await staff('09:40').danger.report({
      patientId: otherId,
      sign: { flags: ['calf-pain-swelling'], joint: null, remark: null },
    });
    expect(await todayOf('09:50')).toEqual(['as-planned']);
    await merge();
    expect(await todayOf('10:30')).toEqual(['none']);
  });

  it('copy nothing', async () => {
    const counts = () =>
      ['prescription', 'screening', 'care_profile', 'signature'].map(
        (table) => rows(`SELECT * FROM ${table}`).length,
      );
    const before = counts();
    await merge();
    expect(counts()).toEqual(before);
  });

  it('let nobody sign on either until a plan is chosen, and then on the record chosen alone', async () => {
    const signs = [await draft(at.patientId), await draft(otherId)] as const;
    await merge();
    for (const sign of signs)
      await expect(sign()).rejects.toMatchObject({
        problem: 'conflict',
        message: expect.stringMatching(/Choose whose prescriptions stay in force/),
      });
    await choose(at.patientId);
    await expect((await draft(at.patientId, '12:30'))()).resolves.toMatchObject({
      signedName: 'clinician-a',
    });
    await expect((await draft(otherId, '12:30'))()).rejects.toThrow(/Prescribe and sign there/);
  });

  it('let nothing approved ahead act until a plan is chosen, and nothing new be approved ahead', async () => {
    const { patientId } = at;
    const preApproval = { itemId: at.item.itemId, steps: 1, days: 14 };
    const ahead = (time: string) => staff(time).care.preApprove({ patientId, preApproval });
    const usable = async () => (await usablePreApprovals(at.accessOn(0), patientId)).length;
    await ahead('09:30');
    expect(await usable()).toBe(1);
    await merge();
    expect(await usable()).toBe(0);
    await expect(ahead('10:30')).rejects.toThrow(/Choose whose prescriptions stay in force/);
    await choose(patientId);
    expect(await usable()).toBe(1);
  });

  it('both keep what is in force until a plan is chosen; then that of the other ends, and says why', async () => {
    await draft(otherId);
    await merge();
    expect([await inForce(at.patientId), await inForce(otherId)]).toEqual([1, 1]);
    expect(await choose(at.patientId)).toEqual({ ended: 2 });
    expect([await inForce(at.patientId), await inForce(otherId)]).toEqual([1, 0]);
    expect(
      rows(`SELECT DISTINCT reason FROM prescription_end WHERE patient_id = '${otherId}'`),
    ).toMatchObject([{ reason: 'Records merged: the plan of the other one stays.' }]);
  });

  it('the plan of the merged record can be the one that stays', async () => {
    await merge();
    await choose(otherId);
    expect([await inForce(at.patientId), await inForce(otherId)]).toEqual([0, 1]);
    await expect((await draft(otherId))()).resolves.toBeDefined();
  });

  it('the merged one can only be read, while danger on it is still answered and a dose still stopped', async () => {
    await merge();
    const profile = {
      diagnosis: 'x',
      inflammatoryArthritis: false,
      followedJoints: ['right-knee'],
      ownedLoadsKg: [],
      formulaSex: null,
    };
    await expect(staff().people.saveProfile({ patientId: otherId, profile })).rejects.toMatchObject({
      problem: 'conflict',
      message: expect.stringMatching(/can only be read/),
    });
    const { inForce: versions } = await staff().prescriptions.list({ patientId: otherId });
    await staff().prescriptions.end({ patientId: otherId, prescriptionId: versions[0]!.id, reason: 'Stop.' });
    expect(await inForce(otherId)).toBe(0);
    await expect(staff().people.saveProfile({ patientId: at.patientId, profile })).resolves.toBe(2);
  });

  it('stand by themselves again once it is undone, and every act stays on record', async () => {
    await merge();
    await staff('10:30').merges.undo({ patientId: at.patientId, otherId, reason: 'Twins.' });
    expect((await staff().people.list()).patients.map(({ id }) => id)).toContain(otherId);
    expect(await mergedWith(at.accessOn(0), at.patientId)).toEqual([]);
    await expect((await draft(otherId))()).resolves.toBeDefined();
    expect(rows('SELECT act, reason FROM patient_merge ORDER BY version')).toMatchObject([
      { act: 'merged', reason },
      { act: 'undone', reason: 'Twins.' },
    ]);
    expect(() => at.store.writer.client.exec('DELETE FROM patient_merge')).toThrow(/append-only/);
    expect(rows("SELECT subject FROM audit WHERE subject = 'patient-merge'")).toHaveLength(2);
  });

  it('merged anew after that, the plan is open again', async () => {
    await merge();
    await choose(at.patientId);
    await staff('11:30').merges.undo({ patientId: at.patientId, otherId, reason });
    await staff('11:40').merges.merge({ patientId: at.patientId, otherId, reason });
    expect((await staff().merges.get({ patientId: at.patientId })).isPlanOpen).toBe(true);
  });
});

describe('a merge is refused', () => {
  it.each([
    ['of a record with itself', () => at.patientId, () => at.patientId, /this record itself/],
    ['into a record that is merged', () => otherId, () => at.patientId, /Open that one and merge there/],
    ['of a record merged already', () => at.patientId, () => otherId, /Undo that first/],
  ])('%s', async (_name, shown, other, why) => {
    await merge();
    await expect(staff().merges.merge({ patientId: shown(), otherId: other(), reason })).rejects.toThrow(why);
  });

  it('of the record shown of another merge', async () => {
    await merge();
    const third = await addPatient(at.accessOn(0), {
      givenName: 'T',
      familyName: 'P',
      birthDay: '1958-06-01',
    });
    await expect(staff().merges.merge({ patientId: third, otherId: at.patientId, reason })).rejects.toThrow(
      /Merge this record into that one instead/,
    );
  });

  it('with a patient of another clinic, or a record kept to another care team', async () => {
    const stranger = await addPatient(accessOf(at.store, 'b', 'clinician-b'), {
      givenName: 'T',
      familyName: 'P',
      birthDay: '1958-06-01',
    });
    await expect(
      staff().merges.merge({ patientId: at.patientId, otherId: stranger, reason }),
    ).rejects.toMatchObject({ problem: 'not-found' });
    await setTeamMember(at.accessOn(0), otherId, await colleague(at, 'Piotr'), true);
    await saveSettings(at.accessOn(0), { 'care-team-restriction': 1 }, 'Small rooms');
    await expect(merge()).rejects.toMatchObject({ problem: 'care-team' });
  });

  it('and so are a plan of nobody merged and an undo of nothing', async () => {
    await expect(choose(at.patientId)).rejects.toMatchObject({ problem: 'conflict' });
    await expect(staff().merges.undo({ patientId: at.patientId, otherId, reason })).rejects.toMatchObject({
      problem: 'conflict',
    });
  });
});

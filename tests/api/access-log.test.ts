import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { asAdministrator, asClinician, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

interface AuditLine {
  readonly act: string;
  readonly subject: string;
  readonly patient_id: string | null;
  readonly actor_id: string;
  readonly detail: string;
}

const linesOf = async (store: Store): Promise<readonly AuditLine[]> => {
  await flushReads(store);
  return store.reader.client
    .prepare("SELECT * FROM audit WHERE clinic_id = 'a' ORDER BY sequence")
    .all() as AuditLine[];
};

const call = (caller: unknown, path: string, input: unknown): Promise<unknown> => {
  const step = path.split('.').reduce<unknown>((at, part) => (at as Record<string, unknown>)[part], caller);
  return (step as (value: unknown) => Promise<unknown>)(input);
};

/** Queries that show a record, found in the list of procedures and not written down here. */
const ofRecord = procedureLines().filter(
  (line) =>
    line.kind === 'query' &&
    line.guard.startsWith('patient of own clinic') &&
    // The front desk opens no record; what it looks at is in `reception.test.ts`.
    line.roles.includes('clinician') &&
    // Ask for a decision that was made: `decision-path.test.ts`.
    !['clinician.review.whatWouldChange', 'clinician.review.certificate'].includes(line.path) &&
    // Asks for a group hour that is planned: `group-sessions.test.ts`.
    line.path !== 'clinician.groupSessions.person' &&
    // Asks for a letter that is kept: `letters.test.ts`.
    line.path !== 'clinician.letters.get',
);
const ofPatient = procedureLines().filter((line) => line.kind === 'query' && line.guard === 'own record');

/** What a query asks for beside the patient. */
const more: Readonly<Record<string, object>> = {
  'clinician.corrections.entries': { subject: 'limit' },
  'clinician.corrections.planOnceSeen': { correctionId: 'none' },
  'clinician.drafts.get': { form: 'first-visit-reason' },
  'clinician.documents.get': { episodeId: 'none' },
  'clinician.replay.knownThen': { at: '2026-03-01' },
  'clinician.replay.ofPatient': { moved: { 'severe-pain': 7 } },
  'clinician.exports.files': { format: 'fhir' },
  'clinician.review.earlierDoses': { itemId: 'none' },
  'clinician.templates.proposed': { templateId: 'none', on: 'saved' },
};

/** What a patient’s query asks for. */
const own: Readonly<Record<string, object>> = {
  'patient.exports.files': { format: 'csv' },
  'patient.papers.plan': {},
};

describe('every opening of a record is audited', () => {
  let store: Store;
  let setting: Setting;
  beforeAll(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    await signedExercise(setting.clinician, setting.patientId);
  });
  afterAll(() => store.close());

  it('finds queries of both kinds in the list of procedures', () => {
    expect(ofRecord.length).toBeGreaterThan(8);
    expect(ofPatient.length).toBeGreaterThan(2);
  });

  it.each(ofRecord)('$path by a clinician leaves a row with the patient and the procedure', async (line) => {
    const before = (await linesOf(store)).length;
    const input = { patientId: setting.patientId, ...more[line.path] };
    await call(asClinician(setting.clinician), line.path, input);
    expect((await linesOf(store)).slice(before)).toMatchObject([
      { act: 'read', subject: line.path, patient_id: setting.patientId, actor_id: 'clinician-a' },
    ]);
  });

  it.each(ofPatient)('$path by the patient leaves one too', async (line) => {
    await call(asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId), line.path, own[line.path]);
    const lines = (await linesOf(store)).filter((row) => row.actor_id === 'patient-user');
    expect(lines.at(-1)).toMatchObject({
      act: 'read',
      subject: line.path,
      patient_id: setting.patientId,
    });
  });

  it('a proposal computed from the record is an opening, though nothing is kept of it', async () => {
    const propose = asClinician(setting.clinician).clinician.prescriptions.propose;
    await expect(propose({ patientId: setting.patientId, request: {} })).rejects.toThrow(/Choose a method/);
    expect((await linesOf(store)).at(-1)).toMatchObject({
      act: 'read',
      subject: 'clinician.prescriptions.propose',
    });
  });

  it('what was refused is audited as well: another clinic’s patient, a role that may not, a stale sign-in', async () => {
    const { clinician, patientId, strangerPatientId } = setting;
    const stale = asPerson(clinician, { provedAt: Date.now() - 3_600_000 });
    const attempts = [
      asClinician(clinician).clinician.people.get({ patientId: strangerPatientId }),
      asAdministrator(clinician).clinician.review.get({ patientId }),
      stale.clinician.screening.clear({ patientId, clearance: {} }),
    ];
    expect((await Promise.allSettled(attempts)).map((one) => one.status)).toEqual(Array(3).fill('rejected'));
    const refused = (await linesOf(store)).filter((row) => row.act === 'refused');
    expect(refused.map((row) => row.subject).sort()).toEqual([
      'clinician.people.get',
      'clinician.review.get',
      'clinician.screening.clear',
    ]);
    expect(JSON.stringify(refused)).not.toContain(strangerPatientId);
  });
});

describe('the patient sees who opened the record', () => {
  it('one line a person and day, with names and how often they looked, newest first, own openings left out', async () => {
    const store = freshStore();
    const { clinician, patientId, otherPatientId } = await twoClinics(store);
    const handed = await addStaff(clinician, {
      name: 'Test Colleague',
      email: 'colleague@test.invalid',
      role: 'clinician',
      administers: false,
    });
    const colleague = { ...accessOf(store, 'a', handed!.userId), now: clinician.now + 86_400_000 };
    await asClinician(clinician).clinician.people.get({ patientId });
    await asClinician(colleague).clinician.people.get({ patientId });
    await asClinician(colleague).clinician.review.get({ patientId });
    // What one page asks for is one look; ten minutes on still, a moment later no more.
    const minutesOn = (minutes: number) =>
      asClinician({ ...colleague, now: colleague.now + minutes * 60_000 }).clinician.people.get({
        patientId,
      });
    await minutesOn(10);
    await minutesOn(20.001);
    await asClinician(colleague).clinician.people.get({ patientId: otherPatientId });
    await flushReads(store);
    const { patient } = asPatient(accessOf(store, 'a', 'patient-user', colleague.now + 1_800_000), patientId);
    await patient.today.get();
    const { lines } = await patient.access.list();
    expect(lines).toEqual([
      {
        day: '2026-03-03',
        name: 'Test Colleague',
        isFeed: false,
        isProgram: false,
        lastAt: colleague.now + 20.001 * 60_000,
        reads: 2,
        writes: 0,
        reasons: [],
        handedTo: [],
      },
      {
        day: '2026-03-02',
        name: null,
        isFeed: false,
        isProgram: false,
        lastAt: clinician.now,
        reads: 1,
        writes: 1,
        reasons: [],
        handedTo: [],
      },
    ]);
    store.close();
  });

  it('not beyond the years the clinic keeps it visible', async () => {
    const store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await saveSettings(clinician, { 'audit-retention-years': 1 }, 'Local rule');
    const daysOn = (days: number) =>
      asPatient(accessOf(store, 'a', 'patient-user', clinician.now + days * 86_400_000), patientId).patient;
    expect((await daysOn(365).access.list()).lines).toHaveLength(1);
    expect((await daysOn(366).access.list()).lines).toHaveLength(0);
    store.close();
  });
});

describe('a clinic that keeps records to care teams', () => {
  const setUp = async () => {
    const store = freshStore();
    const { clinician, patientId } = await twoClinics(store);
    await saveSettings(clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    const add = (name: string) =>
      addStaff(clinician, { name, email: `${name}@test.invalid`, role: 'clinician', administers: false });
    const inside = accessOf(store, 'a', (await add('inside'))!.userId);
    const outside = accessOf(store, 'a', (await add('outside'))!.userId, clinician.now, 'Outside Person');
    await setTeamMember(clinician, patientId, inside.actorId, true);
    return { store, clinician, inside, outside, patientId };
  };

  it('an opening with a reason holds for four hours, and the team and the patient are told by whom and why', async () => {
    const { store, inside, outside, patientId } = await setUp();
    const get = (access: typeof outside) => asClinician(access).clinician.people.get({ patientId });
    await expect(get(outside)).rejects.toMatchObject({ problem: 'care-team' });
    const reason = 'Her clinician is away and she rang in pain';
    const until = await asClinician(outside).clinician.team.open({ patientId, reason });
    expect(until).toBe(outside.now + 4 * 3_600_000);
    expect(await get({ ...outside, now: until - 1 })).toMatchObject({ id: patientId });
    await expect(get({ ...outside, now: until })).rejects.toMatchObject({ problem: 'care-team' });
    expect(await asClinician(inside).clinician.team.emergencyAccesses()).toMatchObject([
      { patientId, userName: 'Outside Person', reason, openedAt: outside.now },
    ]);
    expect(await asClinician(outside).clinician.team.emergencyAccesses()).toEqual([]);
    await flushReads(store);
    const { patient } = asPatient(accessOf(store, 'a', 'patient-user', until), patientId);
    const seen = (await patient.access.list()).lines.find((line) => line.name === 'outside');
    expect(seen).toMatchObject({ reasons: [reason] });
    store.close();
  });

  it('an opening needs a reason of some words', async () => {
    const { store, outside, patientId } = await setUp();
    const open = (reason: string) => asClinician(outside).clinician.team.open({ patientId, reason });
    await expect(open('   because  ')).rejects.toThrow();
    await expect(open('away today')).resolves.toBeTypeOf('number');
    store.close();
  });

  it('leaving the team closes the record again; a patient without a team stays open to all clinicians', async () => {
    const { store, clinician, inside, outside, patientId } = await setUp();
    const get = (access: typeof outside) => asClinician(access).clinician.people.get({ patientId });
    await setTeamMember({ ...clinician, now: clinician.now + 1 }, patientId, outside.actorId, true);
    expect(await get(outside)).toMatchObject({ id: patientId });
    await setTeamMember({ ...clinician, now: clinician.now + 2 }, patientId, outside.actorId, false);
    await expect(get(outside)).rejects.toMatchObject({ problem: 'care-team' });
    await setTeamMember({ ...clinician, now: clinician.now + 3 }, patientId, inside.actorId, false);
    expect(await get(outside)).toMatchObject({ id: patientId });
    store.close();
  });

  it('a clinician who adds a patient is in the team from the first moment', async () => {
    const { store, inside, outside } = await setUp();
    const answer = await asClinician(inside).clinician.people.create({
      patient: { givenName: 'New', familyName: 'Person', birthDay: '1960-01-01', phone: null },
    });
    const added = answer.answer === 'added' ? answer.patientId : '';
    await expect(asClinician(outside).clinician.people.get({ patientId: added })).rejects.toMatchObject({
      problem: 'care-team',
    });
    expect(await asClinician(inside).clinician.people.get({ patientId: added })).toMatchObject({ id: added });
    store.close();
  });
});

import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient } from '#data/patients/people.ts';
import { asAdministrator, asClinician, asPatient, asPerson, signedOut } from '#tests/support/callers.ts';
import { accessOf, clinicNamed, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { type Cell, expected, type Row } from './access-rows.ts';

const probes: Readonly<Record<string, unknown>> = {
  'patient.entries.send': { kind: 'morning', entry: {} },
  'clinician.people.create': { patient: {} },
  'clinician.calculations.tryOne': { id: 'none', input: {} },
};

type Caller = ReturnType<typeof signedOut>;

const call = (caller: Caller, path: string, input: unknown): Promise<unknown> => {
  const step = path.split('.').reduce<unknown>((at, part) => (at as Record<string, unknown>)[part], caller);
  return (step as (value: unknown) => Promise<unknown>)(input);
};

/** The problem a guard would answer, or "in" when the call got past it. */
const answer = async (caller: Caller, path: string, input: unknown): Promise<Cell> => {
  try {
    await call(caller, path, input);
    return 'in';
  } catch (error) {
    const { problem, message } = error as { problem?: string; message: string };
    const guards = ['signed-out', 'not-yours', 'care-team', 'fresh-sign-in', 'set-up'];
    if (problem !== undefined && guards.includes(problem)) return problem as Cell;
    return problem === 'not-found' && /patient in your clinic/.test(message) ? 'not-found' : 'in';
  }
};

/** A clinic that keeps records to care teams: one clinician in the team, one outside. */
const restrictedClinic = async (store: Store) => {
  await clinicNamed(store, 'c');
  const founder = accessOf(store, 'c', 'founder-c');
  await saveSettings(founder, { 'care-team-restriction': 1 }, 'Large clinic');
  const member = (name: string) =>
    addStaff(founder, { name, email: `${name}@test.invalid`, role: 'clinician', administers: false });
  const inside = await member('inside');
  const outside = await member('outside');
  const patientId = await addPatient(founder, {
    givenName: 'Kept',
    familyName: 'Close',
    birthDay: '1960-02-03',
    phone: null,
  });
  await setTeamMember(founder, patientId, inside!.userId, true);
  return { patientId, outside: accessOf(store, 'c', outside!.userId) };
};

describe('who may call what', () => {
  let store: Store;
  let setting: Setting;
  let restricted: Awaited<ReturnType<typeof restrictedClinic>>;
  beforeAll(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    await signedExercise(setting.clinician, setting.patientId);
    restricted = await restrictedClinic(store);
  });
  afterAll(() => store.close());

  it('names every procedure that exists, and none that does not', () => {
    expect(procedureLines().map((line) => line.path)).toEqual(
      Object.keys(expected).sort((a, b) => a.localeCompare(b)),
    );
  });

  it('states on each procedure the roles that the guard lets in, and whether it asks for a fresh sign-in', () => {
    for (const line of procedureLines()) {
      const row = expected[line.path]!;
      const roles = (['clinician', 'administrator', 'reception', 'patient'] as const).filter(
        (role) => row[role] === 'in',
      );
      const wanted = line.path.startsWith('programs.') ? ['program'] : roles;
      const isFresh = [row.bothAnHourLater, row.patientAnHourLater].includes('fresh-sign-in');
      expect([line.path, line.roles, line.guard.includes('fresh sign-in')]).toEqual([
        line.path,
        wanted,
        isFresh,
      ]);
    }
  });

  const cellsOf = async (path: string): Promise<Row> => {
    const { clinician, patientId, strangerPatientId } = setting;
    const own = { patientId, ...((probes[path] ?? {}) as object) };
    const stranger = { ...own, patientId: strangerPatientId };
    const kept = { ...own, patientId: restricted.patientId };
    const both = { administers: true } as const;
    const anHourAgo = Date.now() - 3_600_000;
    const outsideTeam = await answer(asClinician(restricted.outside), path, kept);
    await asClinician(restricted.outside).clinician.team.open({
      patientId: restricted.patientId,
      reason: 'Rang the desk while her clinician was away',
    });
    const later = { ...restricted.outside, now: restricted.outside.now + 60_000 };
    const openedWithReason = await answer(asClinician(later), path, kept);
    // The next procedure begins outside again: five hours on, the opening has run out.
    restricted = {
      ...restricted,
      outside: { ...restricted.outside, now: restricted.outside.now + 5 * 3_600_000 },
    };
    return {
      clinician: await answer(asClinician(clinician), path, own),
      clinicianOnStranger: await answer(asClinician(clinician), path, stranger),
      outsideTeam,
      openedWithReason,
      administrator: await answer(asAdministrator(clinician), path, own),
      reception: await answer(asPerson(clinician, { role: 'reception' }), path, own),
      receptionOnStranger: await answer(asPerson(clinician, { role: 'reception' }), path, stranger),
      both: await answer(asPerson(clinician, both), path, own),
      bothAnHourLater: await answer(asPerson(clinician, { ...both, provedAt: anHourAgo }), path, own),
      bothNotSetUp: await answer(asPerson(clinician, { ...both, setUp: 'passphrase' }), path, own),
      patient: await answer(asPatient(accessOf(store, 'a', 'patient-user'), patientId), path, own),
      patientAnHourLater: await answer(
        asPerson(accessOf(store, 'a', 'patient-user'), { role: 'patient', patientId, provedAt: anHourAgo }),
        path,
        own,
      ),
      signedOut: await answer(signedOut(), path, own),
    };
  };

  it.each(Object.keys(expected))('%s answers each role as its row says', async (path) => {
    expect(await cellsOf(path)).toEqual(expected[path]);
  });

  it('takes a patient’s id from the session: an id sent along is not looked at', async () => {
    const caller = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
    const day = (await call(caller, 'patient.today.get', { patientId: setting.otherPatientId })) as {
      exercises: unknown[];
    };
    expect(day.exercises.length).toBe(1);
  });
});

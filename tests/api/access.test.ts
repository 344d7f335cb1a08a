import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import { setTeamMember } from '#data/care-team.ts';
import { saveChoices } from '#data/choices.ts';
import { addPatient } from '#data/people.ts';
import { addStaff } from '#data/staff.ts';
import type { Store } from '#data/store/store.ts';
import { asAdministrator, asClinician, asPatient, asPerson, signedOut } from '#tests/support/callers.ts';
import { accessOf, clinicNamed, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

/**
 * What each procedure answers to each person. "in" means the guards let the call through: it may
 * then answer, or refuse the empty input. A procedure that is not listed here fails the test.
 */
type Cell = 'in' | 'signed-out' | 'not-yours' | 'not-found' | 'care-team' | 'fresh-sign-in' | 'set-up';
interface Row {
  readonly clinician: Cell;
  /** The patient of another clinic, asked for by this clinic's clinician. */
  readonly clinicianOnStranger: Cell;
  /** A clinician of a clinic that keeps records to care teams, on a record of another team. */
  readonly outsideTeam: Cell;
  /** The same clinician after giving a reason. */
  readonly openedWithReason: Cell;
  readonly administrator: Cell;
  /** A clinician who also administers the clinic. */
  readonly both: Cell;
  /** The same, an hour after the passphrase was last given. */
  readonly bothAnHourLater: Cell;
  /** The same, who has not chosen an own passphrase yet. */
  readonly bothNotSetUp: Cell;
  readonly patient: Cell;
  readonly signedOut: Cell;
}

const ofClinic: Row = {
  clinician: 'in',
  clinicianOnStranger: 'in',
  outsideTeam: 'in',
  openedWithReason: 'in',
  administrator: 'not-yours',
  both: 'in',
  bothAnHourLater: 'in',
  bothNotSetUp: 'set-up',
  patient: 'not-yours',
  signedOut: 'signed-out',
};
const ofRecord: Row = { ...ofClinic, clinicianOnStranger: 'not-found', outsideTeam: 'care-team' };
const ofName: Row = { ...ofRecord, outsideTeam: 'in' };
const freshOnRecord: Row = { ...ofRecord, bothAnHourLater: 'fresh-sign-in' };
const ofStaff: Row = { ...ofClinic, administrator: 'in' };
const ofAdministrator: Row = {
  ...ofClinic,
  clinician: 'not-yours',
  clinicianOnStranger: 'not-yours',
  outsideTeam: 'not-yours',
  openedWithReason: 'not-yours',
  administrator: 'in',
};
const freshAdministrator: Row = { ...ofAdministrator, bothAnHourLater: 'fresh-sign-in' };
const ofPatient: Row = {
  ...ofAdministrator,
  administrator: 'not-yours',
  both: 'not-yours',
  bothAnHourLater: 'not-yours',
  patient: 'in',
};
const ofPerson: Row = { ...ofStaff, bothNotSetUp: 'in', patient: 'in' };

const expected: Readonly<Record<string, Row>> = {
  'account.changePassphrase': ofPerson,
  'account.endEverywhere': ofPerson,
  'account.endSession': ofPerson,
  'account.me': ofPerson,
  'account.prove': ofPerson,
  'account.sessions': ofPerson,
  'admin.care.deputy': ofAdministrator,
  'admin.care.nameDeputy': ofAdministrator,
  'admin.care.wordings': ofAdministrator,
  'admin.care.writeWording': ofAdministrator,
  'admin.choices.list': ofStaff,
  'admin.choices.preview': ofAdministrator,
  'admin.choices.save': freshAdministrator,
  'admin.sites.add': ofAdministrator,
  'admin.sites.close': ofAdministrator,
  'admin.sites.list': ofAdministrator,
  'admin.staff.add': freshAdministrator,
  'admin.staff.deactivate': freshAdministrator,
  'admin.staff.list': ofAdministrator,
  'admin.staff.reactivate': freshAdministrator,
  'admin.staff.reset': freshAdministrator,
  'admin.staff.setRoles': freshAdministrator,
  'patient.access.list': ofPatient,
  'patient.consents.get': ofPatient,
  'patient.consents.give': ofPatient,
  'patient.consents.withdraw': ofPatient,
  'patient.entries.send': ofPatient,
  'patient.history.get': ofPatient,
  'patient.preVisit.questions': ofPatient,
  'patient.preVisit.send': ofPatient,
  'patient.today.get': ofPatient,
  'staff.calculations.list': ofClinic,
  'staff.calculations.tryOne': ofClinic,
  'staff.rules.list': ofClinic,
  'staff.bookings.book': ofRecord,
  'staff.care.addEvent': ofRecord,
  'staff.care.addLimit': ofRecord,
  'staff.care.liftLimit': ofRecord,
  'staff.care.list': ofRecord,
  'staff.care.preApprove': ofRecord,
  'staff.care.withdrawPreApproval': ofRecord,
  'staff.consents.list': ofRecord,
  'staff.consents.record': ofRecord,
  'staff.drafts.drop': ofRecord,
  'staff.drafts.get': ofRecord,
  'staff.drafts.save': ofRecord,
  'staff.entries.send': ofRecord,
  'staff.episodes.change': ofRecord,
  'staff.episodes.list': ofRecord,
  'staff.episodes.open': ofRecord,
  'staff.handover.colleagues': ofRecord,
  'staff.handover.get': ofRecord,
  'staff.handover.ownPause': ofRecord,
  'staff.measurements.forms': ofRecord,
  'staff.measurements.list': ofRecord,
  'staff.measurements.record': ofRecord,
  'staff.measurements.recordEffusion': ofRecord,
  'staff.outcomes.get': ofRecord,
  'staff.outcomes.setGoal': ofRecord,
  'staff.papers.get': ofRecord,
  'staff.people.create': ofClinic,
  'staff.people.get': ofRecord,
  'staff.people.list': ofClinic,
  'staff.people.saveProfile': ofRecord,
  'staff.phones.endPhone': ofRecord,
  'staff.phones.invite': ofRecord,
  'staff.phones.list': ofRecord,
  'staff.phones.withdraw': ofRecord,
  'staff.prescriptions.catalogue': ofRecord,
  'staff.prescriptions.end': ofRecord,
  'staff.prescriptions.keep': ofRecord,
  'staff.prescriptions.list': ofRecord,
  'staff.prescriptions.planning': ofRecord,
  'staff.prescriptions.programme': ofRecord,
  'staff.prescriptions.propose': ofRecord,
  'staff.prescriptions.saveProgramme': ofRecord,
  'staff.prescriptions.sign': ofRecord,
  'staff.preVisits.confirm': ofRecord,
  'staff.preVisits.get': ofRecord,
  'staff.recordFile.list': ofRecord,
  'staff.recordFile.make': freshOnRecord,
  'staff.review.confirmEntry': ofRecord,
  'staff.review.freezeBaseline': ofRecord,
  'staff.review.get': ofRecord,
  'staff.review.respond': ofRecord,
  'staff.review.write': ofRecord,
  'staff.screening.clear': freshOnRecord,
  'staff.screening.list': ofRecord,
  'staff.screening.outcomes': ofRecord,
  'staff.screening.record': ofRecord,
  'staff.screening.sheet': ofRecord,
  'staff.team.get': ofRecord,
  'staff.team.open': ofName,
  'staff.team.openings': ofClinic,
  'staff.team.set': ofRecord,
  'staff.templates.list': ofClinic,
  'staff.visits.begin': ofRecord,
  'staff.visits.checkHome': ofRecord,
  'staff.visits.firstVisit': ofRecord,
  'staff.visits.homeGate': ofRecord,
  'staff.visits.keepFirstVisit': ofRecord,
  'staff.visits.list': ofRecord,
  'staff.visits.watch': ofRecord,
  'staff.worklist.acknowledge': ofRecord,
  'staff.worklist.assign': ofRecord,
  'staff.worklist.filters': ofClinic,
  'staff.worklist.list': ofClinic,
  'staff.worklist.snooze': ofRecord,
  'staff.worklist.takeOn': ofRecord,
};

const probes: Readonly<Record<string, unknown>> = {
  'patient.entries.send': { kind: 'morning', entry: {} },
  'staff.people.create': { patient: {} },
  'staff.calculations.tryOne': { id: 'none', input: {} },
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
  await saveChoices(founder, { 'care-team-restriction': 1 }, 'Large clinic');
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
      const roles = (['clinician', 'administrator', 'patient'] as const).filter((role) => row[role] === 'in');
      const isFresh = row.bothAnHourLater === 'fresh-sign-in';
      expect([line.path, line.roles, line.guard.includes('fresh sign-in')]).toEqual([
        line.path,
        roles,
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
    await asClinician(restricted.outside).staff.team.open({
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
      both: await answer(asPerson(clinician, both), path, own),
      bothAnHourLater: await answer(asPerson(clinician, { ...both, provedAt: anHourAgo }), path, own),
      bothNotSetUp: await answer(asPerson(clinician, { ...both, setUp: 'passphrase' }), path, own),
      patient: await answer(asPatient(accessOf(store, 'a', 'patient-user'), patientId), path, own),
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

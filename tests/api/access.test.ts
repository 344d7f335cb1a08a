import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import type { Store } from '#data/store/store.ts';
import { asAdministrator, asClinician, asPatient, signedOut } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

/**
 * What each procedure answers to each person. "in" means the guard lets the call through: it may
 * then answer, or refuse the empty input. A procedure that is not listed here fails the test.
 */
type Cell = 'in' | 'UNAUTHORIZED' | 'FORBIDDEN' | 'NOT_FOUND';
interface Row {
  readonly clinician: Cell;
  /** The patient of another clinic, asked for by this clinic's clinician. */
  readonly clinicianOnStranger: Cell;
  readonly administrator: Cell;
  readonly patient: Cell;
  readonly signedOut: Cell;
}

const ofClinic: Row = {
  clinician: 'in',
  clinicianOnStranger: 'in',
  administrator: 'FORBIDDEN',
  patient: 'FORBIDDEN',
  signedOut: 'UNAUTHORIZED',
};
const ofRecord: Row = { ...ofClinic, clinicianOnStranger: 'NOT_FOUND' };
const ofPatient: Row = {
  clinician: 'FORBIDDEN',
  clinicianOnStranger: 'FORBIDDEN',
  administrator: 'FORBIDDEN',
  patient: 'in',
  signedOut: 'UNAUTHORIZED',
};

const expected: Readonly<Record<string, Row>> = {
  'patient.entries.send': ofPatient,
  'patient.history.get': ofPatient,
  'patient.today.get': ofPatient,
  'staff.calculations.list': ofClinic,
  'staff.calculations.tryOne': ofClinic,
  'staff.care.addEvent': ofRecord,
  'staff.care.addLimit': ofRecord,
  'staff.care.liftLimit': ofRecord,
  'staff.care.list': ofRecord,
  'staff.care.preApprove': ofRecord,
  'staff.care.withdrawPreApproval': ofRecord,
  'staff.measurements.forms': ofRecord,
  'staff.measurements.list': ofRecord,
  'staff.measurements.record': ofRecord,
  'staff.measurements.recordEffusion': ofRecord,
  'staff.people.create': ofClinic,
  'staff.people.get': ofRecord,
  'staff.people.list': ofClinic,
  'staff.people.saveProfile': ofRecord,
  'staff.prescriptions.catalogue': ofRecord,
  'staff.prescriptions.end': ofRecord,
  'staff.prescriptions.keep': ofRecord,
  'staff.prescriptions.list': ofRecord,
  'staff.prescriptions.programme': ofRecord,
  'staff.prescriptions.propose': ofRecord,
  'staff.prescriptions.saveProgramme': ofRecord,
  'staff.prescriptions.sign': ofRecord,
  'staff.review.confirmEntry': ofRecord,
  'staff.review.freezeBaseline': ofRecord,
  'staff.review.get': ofRecord,
  'staff.review.respond': ofRecord,
  'staff.review.write': ofRecord,
  'staff.screening.clear': ofRecord,
  'staff.screening.list': ofRecord,
  'staff.screening.outcomes': ofRecord,
  'staff.screening.record': ofRecord,
  'staff.screening.sheet': ofRecord,
  'staff.worklist.acknowledge': ofRecord,
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

/** The code a guard would answer, or "in" when the call got past it. */
const answer = async (caller: Caller, path: string, input: unknown): Promise<Cell> => {
  try {
    await call(caller, path, input);
    return 'in';
  } catch (error) {
    const { code, message } = error as { code?: string; message: string };
    if (code === 'UNAUTHORIZED' || code === 'FORBIDDEN') return code;
    return code === 'NOT_FOUND' && /patient in your clinic/.test(message) ? 'NOT_FOUND' : 'in';
  }
};

describe('who may call what', () => {
  let store: Store;
  let setting: Setting;
  beforeAll(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    await signedExercise(setting.clinician, setting.patientId);
  });
  afterAll(() => store.close());

  it('names every procedure that exists, and none that does not', () => {
    expect(procedureLines().map((line) => line.path)).toEqual(
      Object.keys(expected).sort((a, b) => a.localeCompare(b)),
    );
  });

  it('states on each procedure the roles that the guard lets in', () => {
    for (const line of procedureLines()) {
      const row = expected[line.path]!;
      expect([line.path, line.roles]).toEqual([
        line.path,
        row.patient === 'in' ? ['patient'] : ['clinician'],
      ]);
    }
  });

  it.each(Object.keys(expected))('%s answers each role as its row says', async (path) => {
    const { clinician, patientId, strangerPatientId } = setting;
    const probe = probes[path] ?? {};
    const own = { patientId, ...(probe as object) };
    const patientAccess = accessOf(store, 'a', 'patient-user');
    const cells: Row = {
      clinician: await answer(asClinician(clinician), path, own),
      clinicianOnStranger: await answer(asClinician(clinician), path, {
        ...own,
        patientId: strangerPatientId,
      }),
      administrator: await answer(asAdministrator(clinician), path, own),
      patient: await answer(asPatient(patientAccess, patientId), path, own),
      signedOut: await answer(signedOut(), path, own),
    };
    expect(cells).toEqual(expected[path]);
  });

  it('takes a patient’s id from the session: an id sent along is not looked at', async () => {
    const caller = asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);
    const day = (await call(caller, 'patient.today.get', { patientId: setting.otherPatientId })) as {
      exercises: unknown[];
    };
    expect(day.exercises.length).toBe(1);
  });
});

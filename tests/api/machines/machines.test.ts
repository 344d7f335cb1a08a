/** Machines of the clinic through the procedures: kept, corrected, retired; and a dose on one, up to the phone. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { setGroupMember, writeGroupHour } from '#data/clinic/group-hours.ts';
import type { Store } from '#data/database/store.ts';
import { patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { asAdministrator, asClinician } from '#tests/support/callers.ts';
import { accessOf, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

let store: Store;
let patientId: string;
beforeEach(async () => {
  store = freshStore();
  patientId = (await twoClinics(store)).patientId;
});
afterEach(() => store.close());

const machine = {
  name: 'Leg press by the window',
  kind: 'leg-press',
  loading: 'stack',
  place: 'Gym',
  firstKg: 10,
  stepKg: 5,
  lastKg: 100,
  hasHalfStep: false,
};
const admin = (clinic = 'a') => asAdministrator(accessOf(store, clinic, 'admin')).admin.machines;

describe('the machines of a clinic', () => {
  it('are entered, corrected with the entry before kept, retired and brought back, none deleted', async () => {
    const machineId = await admin().add({ machine });
    await admin().correct({ machineId, seen: 1, machine: { ...machine, lastKg: 120 } });
    await admin().retire({ machineId, seen: 2 });
    const [retired] = await admin().list();
    expect(retired).toMatchObject({ version: 3, lastKg: 120, isRetired: true, writtenBy: 'admin' });
    expect(retired?.earlier.map(({ lastKg }) => lastKg)).toEqual([100, 120]);
    await admin().bringBack({ machineId, seen: 3 });
    expect(await admin().list()).toMatchObject([{ version: 4, isRetired: false }]);
  });

  it('are the clinic’s own: another one neither reads nor changes them', async () => {
    const machineId = await admin().add({ machine });
    expect(await admin('b').list()).toEqual([]);
    await expect(admin('b').retire({ machineId, seen: 1 })).rejects.toThrow(/no such machine in your clinic/);
    expect(await asClinician(accessOf(store, 'b', 'clinician-b')).clinician.machines.list()).toEqual([]);
  });

  it('are changed only as the page showed them', async () => {
    const machineId = await admin().add({ machine });
    await admin().correct({ machineId, seen: 1, machine: { ...machine, name: 'Leg press' } });
    await expect(admin().correct({ machineId, seen: 1, machine })).rejects.toThrow(
      /changed this machine meanwhile/,
    );
    await expect(admin().retire({ machineId, seen: 1 })).rejects.toThrow(/changed this machine meanwhile/);
    await expect(admin().bringBack({ machineId, seen: 2 })).rejects.toThrow(/in use already/);
  });

  it('keep their kind, which signed doses rely on', async () => {
    const machineId = await admin().add({ machine });
    const cable = { ...machine, kind: 'cable' };
    await expect(admin().correct({ machineId, seen: 1, machine: cable })).rejects.toThrow(
      /Retire it and add a new one\./,
    );
    expect(await admin().list()).toMatchObject([{ version: 1, kind: 'leg-press' }]);
  });

  it('are refused with what to type where steps do not lead to the last load', async () => {
    await expect(admin().add({ machine: { ...machine, lastKg: 102 } })).rejects.toThrow(/Type a last load/);
    expect(await admin().list()).toEqual([]);
  });
});

describe('a dose on a machine', () => {
  const signedOnPress = async () => {
    const machineId = await admin().add({ machine });
    const working = workingPatient(store, patientId);
    await working.signed();
    const staff = working.clinicianAt(start).clinician;
    const exercise = { exerciseId: 'leg-press-machine', side: 'both' } as const;
    const measurement = { kind: 'repetitions-to-failure', day: working.today, loadKg: 60, repetitions: 10 };
    await staff.measurements.record({ patientId, measurement: { ...measurement, ...exercise } });
    const request = { method: 'low-load', ...exercise, machineId, loadKg: 30 };
    const prescriptionId = await staff.prescriptions.saveDraft({ patientId, request });
    await staff.prescriptions.sign({ patientId, prescriptionId });
    return { machineId, working, prescriptionId };
  };

  it('is for the clinic on the phone: told with its place and never among the exercises of a session', async () => {
    const { working } = await signedOnPress();
    const today = await working.patientAt(start).patient.today.get();
    expect(today.exercises.map(({ dose }) => dose.exerciseId)).toEqual(['knee-extension-seated']);
    expect(today.atClinic).toMatchObject([
      { dose: { exerciseId: 'leg-press-machine', machine: { name: 'Leg press by the window' }, loadKg: 30 } },
    ]);
  });

  const groupOn = async ({ working }: Awaited<ReturnType<typeof signedOnPress>>) => {
    const access = accessOf(store, 'a', 'clinician-a');
    const when = `${working.today}T08:00`;
    const row = { name: 'Knees', place: 'Gym', when, minutes: 60, clinicianId: access.actorId };
    const hourId = await writeGroupHour(access, { row, clinicianName: access.actorName, replaces: null });
    await setGroupMember(access, hourId, patientId, true);
    return async () => {
      const [person] = await working.clinicianAt(start).clinician.groupSessions.people({ hourId });
      if (!person || person.name === null) throw new Error('Nobody is shown.');
      const onPress = person.today.exercises.find(({ dose }) => dose.exerciseId === 'leg-press-machine');
      return { onPress, told: person.today.told.join(' ') };
    };
  };

  it('is among the exercises of a group hour, where somebody of the clinic is beside', async () => {
    const inGroup = await groupOn(await signedOnPress());
    expect((await inGroup()).onPress).toMatchObject({ today: 'as-planned', isDoable: true, reasons: [] });
  });

  it.each([
    ['its machine is retired', 'machine-gone', /no longer in use/, /nicht mehr zur Verfügung/],
    ['its load is no longer on it', 'machine-load-gone', /no longer be set/, /nicht mehr einstellen/],
  ])('rests where %s, and group hour, phone and desk say why', async (_when, code, en, de) => {
    const signed = await signedOnPress();
    const { machineId, working } = signed;
    const inGroup = await groupOn(signed);
    if (code === 'machine-gone') await admin().retire({ machineId, seen: 1 });
    else await admin().correct({ machineId, seen: 1, machine: { ...machine, firstKg: 35 } });
    const group = await inGroup();
    expect(group.onPress).toMatchObject({ today: 'rest-this-joint', isDoable: false, reasons: [{ code }] });
    expect(group.told).toMatch(en);
    const phone = await working.patientAt(start).patient.today.get();
    expect(phone.atClinic).toMatchObject([{ today: 'rest-this-joint' }]);
    expect(phone.exercises).toMatchObject([{ today: 'as-planned' }]);
    expect(phone.changes.map((text) => text.de).join(' ')).toMatch(de);
    const items = async (patient: string) => {
      const { lines } = await working.clinicianAt(start).clinician.worklist.list();
      return lines
        .filter((line) => line.patientId === patient)
        .flatMap(({ item, others }) => [item, ...others]);
    };
    const stopped = (await items(patientId)).filter(({ kind }) => kind === 'dose-stopped');
    expect(stopped.map(({ sentence }) => sentence)).toEqual([expect.stringMatching(en)]);
    // The machine as it was: the dose can be set again, and nothing is left to do.
    if (code === 'machine-gone') await admin().bringBack({ machineId, seen: 2 });
    else await admin().correct({ machineId, seen: 2, machine });
    expect((await items(patientId)).filter(({ kind }) => kind === 'dose-stopped')).toEqual([]);
  });

  it('is entered by the clinic with what was done on it', async () => {
    const { working, prescriptionId } = await signedOnPress();
    const staff = working.clinicianAt(start).clinician;
    const { inForce } = await staff.prescriptions.list({ patientId });
    const { itemId } = inForce.find(({ id }) => id === prescriptionId)!;
    const sets = [1, 2, 3].map((set) => ({
      ...{ prescriptionId, itemId, set },
      ...{ repetitions: 25, loadKg: 30, reserve: 2, stopReason: 'none' },
    }));
    const answers = {
      ...{ entryId: 'press-day', kind: 'full', didExtra: false, stoppedByFlag: false },
      ...{ redFlags: [], extraPainRelief: false, sets, joints: [] },
    };
    const sent = { kind: 'session', enteredAs: 'clinic-from-paper', day: working.today, answers } as const;
    await staff.entries.send({ patientId, ...sent });
    const kept = (await recordOf(accessOf(store, 'a', 'reader'), patientId))?.sessions;
    expect(kept?.map(({ sets: done }) => done.map(({ loadKg }) => loadKg))).toEqual([[30, 30, 30]]);
  });

  it('takes the loads of its machine into the plan, and a limit lowers it along them at once', async () => {
    await signedOnPress();
    const access = accessOf(store, 'a', 'clinician-a');
    const staff = asClinician(access).clinician;
    const limit = {
      joint: 'right-knee',
      kind: 'load-limit',
      limitKg: 17,
      from: access.day,
      author: 'Dr Example',
      ...{ to: null, remark: null },
    };
    await staff.care.addLimit({ patientId, limit });
    const plan = await planOf(access, (await patientOf(access, patientId))!);
    const press = plan.items.find(({ exerciseId }) => exerciseId === 'leg-press-machine');
    expect(press).toMatchObject({ dose: null, today: 'bad-day', easierSession: { loadKg: 15 } });
  });
});

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { recordOf } from '#data/patients/record.ts';
import { addVersion, signPrescription } from '#data/prescribing/prescribing.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { setLog } from '#data/schema/schema.ts';
import { asPatient } from '#tests/support/callers.ts';
import {
  accessOf,
  lowLoadDose,
  type Setting,
  sessionEntry,
  signedExercise,
  twoClinics,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
let followed: { readonly prescriptionId: string; readonly itemId: string };
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  followed = await signedExercise(setting.clinician, setting.patientId);
});
afterEach(() => store.close());

/** The dose is changed and signed while the phone has no signal. */
const changed = async (): Promise<string> => {
  const { clinician, patientId } = setting;
  const dose = { ...lowLoadDose, loadKg: 2 };
  const id = await addVersion(clinician, patientId, {
    itemId: followed.itemId,
    dose,
    badDay: { ...dose, sets: 1 },
    joints: ['right-knee'],
    cautions: [
      { id: 'test', text: 'Test.', patient: { key: 'stop-signs' }, from: 'test', support: 'clinic' },
    ],
    working: [],
    origin: 'clinician',
  });
  await signPrescription(clinician, patientId, id);
  return id;
};

describe('a session done without signal by a prescription that changed meanwhile', () => {
  it('is kept against the version that was followed, with the load that was used', async () => {
    const { clinician, patientId } = setting;
    const newer = await changed();
    expect(inForce(await prescriptionsOf(clinician, patientId)).map((row) => row.id)).toEqual([newer]);
    const set = { set: 1, repetitions: 15, loadKg: 4, reserve: 2, stopReason: 'none' as const };
    const entry = sessionEntry({ entryId: 'late', sets: [{ ...followed, ...set }] });
    const api = asPatient(accessOf(store, 'a', 'patient'), patientId);
    expect(await api.patient.entries.send({ kind: 'session', entry })).toMatchObject({ stored: 'stored' });
    const rows = await store.read.select().from(setLog);
    expect(rows.map((row) => [row.prescriptionId, row.loadKg])).toEqual([[followed.prescriptionId, 4]]);
    const record = await recordOf(clinician, patientId);
    expect(record?.sessions[0]?.sets[0]?.prescriptionId).toBe(followed.prescriptionId);
  });
});

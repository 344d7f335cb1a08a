/** A signature may be withdrawn by whoever gave it, as long as the dose cannot have reached the patient. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { signature, signatureWithdrawal } from '#data/schema/schema.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, sessionEntry, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';

const minute = 60_000;

describe('a signature', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
  });
  afterEach(() => store.close());

  const prescriptions = (at = start) => work.clinicianAt(at).clinician.prescriptions;
  const withdraw = (prescriptionId: string, at = start + minute) =>
    prescriptions(at).withdrawSignature({ patientId, prescriptionId });
  const phoneOpens = (at: number) => work.patientAt(at).patient.today.get();

  it('that is withdrawn lets the dose wait again, and both acts stay on record', async () => {
    const id = await work.signed();
    await withdraw(id);
    const { inForce, unsigned } = await prescriptions().list({ patientId });
    expect(inForce).toEqual([]);
    expect(unsigned.map(({ version }) => version)).toEqual([2]);
    expect((await phoneOpens(start + 2 * minute)).exercises).toEqual([]);
    expect((await store.read.select().from(signature)).map((row) => row.prescriptionId)).toEqual([id]);
    expect(await store.read.select().from(signatureWithdrawal)).toMatchObject([
      { prescriptionId: id, withdrawnName: 'Clinician A' },
    ]);
    const { lines } = await work.clinicianAt(start + 2 * minute).clinician.worklist.list();
    expect(lines.map(({ item }) => item.kind)).toContain('awaiting-signature');
    await prescriptions(start + 3 * minute).sign({ patientId, prescriptionId: unsigned[0]!.id });
    expect((await prescriptions().list({ patientId })).inForce).toHaveLength(1);
  });

  it('that is withdrawn leaves the dose waiting since the day it first waited, however often it is signed', async () => {
    await work.kept();
    const since = async (at: number) => {
      const { lines } = await work.clinicianAt(at).clinician.worklist.list();
      const items = lines.flatMap(({ item, others }) => [item, ...others]);
      return items.find(({ kind }) => kind === 'awaiting-signature')?.since;
    };
    expect(await since(start + dayMs)).toBe(start);
    for (const days of [4, 5]) {
      const at = start + days * dayMs;
      const { unsigned } = await prescriptions(at).list({ patientId });
      await prescriptions(at).sign({ patientId, prescriptionId: unsigned[0]!.id });
      await withdraw(unsigned[0]!.id, at + minute);
      expect(await since(at + 2 * minute)).toBe(start);
    }
  });

  it('that is withdrawn brings back the dose that was in force before', async () => {
    const first = await work.signed();
    await phoneOpens(start + minute);
    const { itemId } = (await prescriptions().list({ patientId })).inForce[0]!;
    const request = {
      method: 'low-load',
      exerciseId: 'knee-extension-seated',
      side: 'right',
      percent: 40,
      repetitionsLow: 16,
      repetitionsHigh: 20,
      reserve: 2,
    };
    const second = await prescriptions().saveDraft({ patientId, request, itemId });
    await prescriptions().sign({ patientId, prescriptionId: second });
    expect((await prescriptions().list({ patientId })).inForce.map(({ id }) => id)).toEqual([second]);
    await withdraw(second);
    expect((await prescriptions().list({ patientId })).inForce.map(({ id }) => id)).toEqual([first]);
  });

  it('stays once the phone was sent the dose, whether or not anybody saw it', async () => {
    const id = await work.signed();
    await phoneOpens(start + minute);
    await expect(withdraw(id, start + 2 * minute)).rejects.toThrow(/phone was sent this dose already/);
    expect((await prescriptions().list({ patientId })).inForce).toHaveLength(1);
  });

  it('stays once a session was done at the dose, also where the phone was never sent it by the server', async () => {
    const id = await work.signed();
    const { itemId } = (await prescriptions().list({ patientId })).inForce[0]!;
    const set = { prescriptionId: id, itemId, set: 1, repetitions: 15, loadKg: 3, reserve: 2 };
    const at = start + dayMs;
    const sets = [{ ...set, stopReason: 'none' as const }];
    const entry = sessionEntry({ entryId: 's-1', beganAt: at - 30 * minute, sentAt: at, sets });
    await work.patientAt(at).patient.entries.send({ kind: 'session', entry });
    await expect(withdraw(id, at + minute)).rejects.toThrow(/A session was done/);
  });

  it('is withdrawn by nobody else, and not twice', async () => {
    const id = await work.signed();
    const other = asClinician(accessOf(store, 'a', 'clinician-b', start + minute, 'Clinician B')).clinician;
    await expect(other.prescriptions.withdrawSignature({ patientId, prescriptionId: id })).rejects.toThrow(
      /A colleague signed it/,
    );
    await withdraw(id);
    await expect(withdraw(id)).rejects.toThrow(/withdrawn already/);
  });

  it('that ended another prescription is not withdrawn, since that one would not come back', async () => {
    await work.signed();
    const again = await work.kept();
    await prescriptions(start + minute).sign({ patientId, prescriptionId: again, replace: true });
    await expect(withdraw(again, start + 2 * minute)).rejects.toThrow(/ended another prescription/);
  });
});

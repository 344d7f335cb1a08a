/** The same exercise, side and method stands once. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

describe('signing an exercise that is in force already', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
  });
  afterEach(() => store.close());

  const inForce = async () =>
    (await work.clinicianAt(start).clinician.prescriptions.list({ patientId })).inForce.map(({ id }) => id);

  it('asks before it replaces it; unasked nothing is signed and nothing ends', async () => {
    const first = await work.signed();
    const second = await work.kept();
    const sign = (more: { readonly replace?: boolean } = {}) =>
      work.clinicianAt(start).clinician.prescriptions.sign({ patientId, prescriptionId: second, ...more });
    await expect(sign()).rejects.toMatchObject({
      problem: 'not-confirmed',
      questions: [expect.stringContaining('is in force already for this side and method')],
    });
    expect(await inForce()).toEqual([first]);
    await sign({ replace: true });
    expect(await inForce()).toEqual([second]);
    const { versions } = await work.clinicianAt(start).clinician.prescriptions.list({ patientId });
    expect(versions.find(({ id }) => id === first)?.endReason).toBe(
      'Replaced by a newly signed prescription.',
    );
  });
});

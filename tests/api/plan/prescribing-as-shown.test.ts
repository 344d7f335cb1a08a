/** Choosing an exercise and keeping its dose: what is listed, and that nothing is kept that was not read. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

const request = { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right' };

describe('prescribing for a patient who is known', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  const prescriptions = () => work.clinicianAt(start + 60_000).clinician.prescriptions;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
    await work.signed();
  });
  afterEach(() => store.close());

  it('lists what is in force first, by both its names, and finds it by either', async () => {
    for (const words of ['straighten the knee', 'seated knee ext']) {
      const search = { words, method: 'low-load', joint: 'right-knee' } as const;
      const [first] = await prescriptions().choices({ patientId, search });
      expect(first).toMatchObject({
        exerciseId: 'knee-extension-seated',
        trade: 'Seated knee extension',
        plain: 'Straighten the knee, sitting',
        isInForce: true,
        possible: [{ method: 'low-load', side: 'right' }],
      });
    }
  });

  it('refuses a search for what there is not', async () => {
    const search = { joint: 'third-knee' } as unknown as { joint: 'right-knee' };
    await expect(prescriptions().choices({ patientId, search })).rejects.toThrow();
  });

  it('keeps the dose that was shown', async () => {
    const { dose } = await prescriptions().propose({ patientId, request });
    const id = await prescriptions().saveDraft({ patientId, request, shown: dose });
    const { unsigned } = await prescriptions().list({ patientId });
    expect(unsigned.find((row) => row.id === id)?.dose).toEqual(dose);
  });

  it.each([
    ['heavier', 0.5],
    ['lighter', -0.5],
  ])('keeps nothing where the dose shown was %s than it is now, and says what to do', async (_, off) => {
    const { dose } = await prescriptions().propose({ patientId, request });
    const shown = { ...dose, loadKg: (dose as { loadKg: number }).loadKg + off };
    const before = (await prescriptions().list({ patientId })).versions.length;
    await expect(prescriptions().saveDraft({ patientId, request, shown })).rejects.toThrow(
      /Nothing was saved\. Propose it again/,
    );
    expect((await prescriptions().list({ patientId })).versions).toHaveLength(before);
  });

  it('proposes a load that was typed beside what is in force, and refuses one that is not at home', async () => {
    const { inForce } = await prescriptions().list({ patientId });
    const { loadKg } = inForce[0]!.dose as { loadKg: number };
    const again = await prescriptions().propose({ patientId, request: { ...request, loadKg } });
    expect(again.dose).toMatchObject({ loadKg });
    const odd = { ...request, loadKg: loadKg + 0.01 };
    await expect(prescriptions().propose({ patientId, request: odd })).rejects.toMatchObject({
      message: expect.stringMatching(/not among the loads at home/),
    });
  });
});

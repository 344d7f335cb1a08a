/** A list that stands open signs nothing past a warning sign that came in after it was read. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';

const morning = start + dayMs;
const request = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  percent: 40,
  repetitionsLow: 16,
  repetitionsHigh: 20,
  reserve: 2,
};

describe('a dose that waits, and a warning sign', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  let waiting: string;
  const prescriptions = (at: number) => work.clinicianAt(at).clinician.prescriptions;
  const sign = (readAt?: number) =>
    prescriptions(morning + 60_000).sign({
      patientId,
      prescriptionId: waiting,
      ...(readAt === undefined ? {} : { readAt }),
    });
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
    await work.signed();
    const { itemId } = (await prescriptions(start).list({ patientId })).inForce[0]!;
    waiting = await prescriptions(start).saveDraft({ patientId, request, itemId });
    await work.answeredMorning(morning, 2, ['calf-pain-swelling']);
  });
  afterEach(() => store.close());

  it('is refused with the way out where the list was read before the sign, and stays unsigned', async () => {
    await expect(sign(morning - 1)).rejects.toThrow(/Nothing was signed\. Reload it/);
    const { unsigned } = await prescriptions(morning).list({ patientId });
    expect(unsigned.map(({ id }) => id)).toEqual([waiting]);
  });

  it.each([
    ['at the instant of the sign', morning],
    ['after it', morning + 1],
  ])('is the clinician’s to sign where the list was read %s: it showed the sign', async (_when, readAt) => {
    await sign(readAt);
    expect((await prescriptions(morning).list({ patientId })).unsigned).toEqual([]);
  });

  it('is refused by the instant the worklist itself says it was read at', async () => {
    const { readAt } = await work.clinicianAt(morning - 1).clinician.worklist.list();
    await expect(sign(readAt)).rejects.toThrow(/came in since/);
  });
});

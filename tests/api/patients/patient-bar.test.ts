/** The bar over a record says where the person stands, on each day of an episode of care. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs, workingPatient } from '#tests/support/working-patient.ts';

describe('the bar of a record', () => {
  let store: Store;
  let patientId: string;
  let strangerPatientId: string;
  let work: ReturnType<typeof workingPatient>;
  const bar = (at: number) => work.clinicianAt(at).clinician.people.bar({ patientId });
  const consent = (kind: string, act: 'given' | 'refused') =>
    work.clinicianAt(start).clinician.consents.record({
      patientId,
      kind,
      act,
      wordingSource: 'proposed',
      wordingVersion: 2,
    } as never);
  beforeEach(async () => {
    store = freshStore();
    ({ patientId, strangerPatientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
  });
  afterEach(() => store.close());

  it('of somebody new: not screened, nothing asked, no episode of care, and the first step', async () => {
    expect(await bar(start)).toEqual({
      state: { state: 'not-recorded' },
      screening: null,
      consents: ['treatment', 'record-keeping', 'remote-monitoring'].map((kind) => ({
        kind,
        act: 'not-asked',
        at: null,
      })),
      items: [],
      next: { because: 'first-visit', step: 'consents' },
    });
  });

  it('goes on to consent, then to the baseline, then to the dose that waits', async () => {
    await work.kept();
    expect((await bar(start)).next).toMatchObject({ step: 'ask-consent' });
    await consent('treatment', 'given');
    expect((await bar(start)).consents[0]).toEqual({ kind: 'treatment', act: 'given', at: start });
    expect((await bar(start)).next).toEqual({ because: 'setup', step: 'set-baseline', joint: 'right-knee' });
    await work.signed();
    const { next, items } = await bar(start);
    expect(next).toMatchObject({ because: 'item', kind: 'awaiting-signature' });
    expect(items.map(({ kind }) => kind)).toEqual(['awaiting-signature']);
  });

  it('a warning sign is the state and the next thing until a contact has reached the patient', async () => {
    await work.signed();
    await consent('treatment', 'given');
    const morning = start + dayMs;
    await work.answeredMorning(morning, 2, ['calf-pain-swelling']);
    const told = await bar(morning);
    expect(told.state).toEqual({ state: 'warning-sign', since: morning });
    expect(told.next).toMatchObject({ because: 'item', kind: 'red-flag' });
  });

  it('the screening holds through its last day and has run out the day after', async () => {
    await work.kept();
    const { screening } = await bar(start);
    const last = Date.parse(`${screening!.until}T12:00:00Z`);
    expect((await bar(last)).screening).toMatchObject({ isOver: false });
    const over = await bar(last + dayMs);
    expect(over.screening).toMatchObject({ isOver: true });
    expect(over.next).toMatchObject({ step: 'screen' });
  });

  it('of a patient of another clinic is not answered', async () => {
    await expect(
      work.clinicianAt(start).clinician.people.bar({ patientId: strangerPatientId }),
    ).rejects.toThrow();
  });
});

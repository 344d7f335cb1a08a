/** A pause of a clinician's own, through the procedures: resumed by a clinician, exercise by exercise. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { asPerson } from '#tests/support/callers.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

const minute = 60_000;
/** Half past seven on the morning after. */
const morning = Date.parse('2026-03-03T07:30:00Z');
const later = (minutes: number): number => morning + minutes * minute;

describe('a pause of a clinician', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
    await work.signed();
  });
  afterEach(() => store.close());
  const clinicianAt = (at: number, minutesSinceProof = 0) =>
    asPerson(accessOf(store, 'a', 'clinician-a', at, 'Clinician A'), {
      provedAt: Date.now() - minutesSinceProof * minute,
    }).clinician;
  const pauseAt = (at: number, pause: Record<string, unknown>) =>
    clinicianAt(at).danger.pause({ patientId, pause });
  const todayOf = async (at: number) => (await work.patientAt(at).patient.today.get()).exercises[0]?.today;
  const plainPause = { cause: 'holiday', joint: null, reason: 'Two weeks by the sea.', until: '2026-03-17' };

  it('for a holiday opens no warning sign and is resumed without a contact', async () => {
    await pauseAt(morning, plainPause);
    expect(await todayOf(later(1))).toBe('none');
    const { plan } = await clinicianAt(later(1)).danger.get({ patientId });
    expect(plan.signs).toEqual([]);
    const itemIds = plan.items.map(({ itemId }) => itemId);
    const row = { patientId, pauseId: plan.pauses[0]!.pause.id, itemIds, reason: 'Back early.' };
    await expect(clinicianAt(later(2), 11).danger.resume(row)).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
    await clinicianAt(later(2), 9).danger.resume(row);
    expect(await todayOf(later(3))).toBe('as-planned');
  });

  it('lets no step be approved ahead while it lasts, and again once the exercise is resumed', async () => {
    await pauseAt(morning, plainPause);
    const { plan } = await clinicianAt(later(1)).danger.get({ patientId });
    const { itemId } = plan.items[0]!;
    const ahead = (at: number) =>
      clinicianAt(at).care.preApprove({ patientId, preApproval: { itemId, steps: 1, days: 14 } });
    await expect(ahead(later(2))).rejects.toThrow(/stopped now/);
    const pauseId = plan.pauses[0]!.pause.id;
    await clinicianAt(later(3)).danger.resume({ patientId, pauseId, itemIds: [itemId], reason: 'Back.' });
    await expect(ahead(later(4))).resolves.toBeDefined();
  });

  it('for a concern of his or her own is a warning sign and waits for a contact', async () => {
    await pauseAt(morning, {
      ...plainPause,
      cause: 'warning-sign',
      reason: 'Sounded confused on the telephone.',
      until: null,
    });
    const { plan } = await clinicianAt(later(1)).danger.get({ patientId });
    expect(plan.signs.map(({ sign, state }) => [sign.source, state])).toEqual([['clinician', 'reported']]);
    expect(await todayOf(later(1))).toBe('none');
  });

  it('for a concern is not dated: it ends by a contact and by no day', async () => {
    const concern = {
      ...plainPause,
      cause: 'warning-sign',
      reason: 'Sounded confused.',
      until: '2026-03-20',
    };
    await expect(pauseAt(morning, concern)).rejects.toThrow('Leave the day out.');
  });

  it('of one joint leaves exercises that do not load it alone', async () => {
    await pauseAt(morning, { ...plainPause, cause: 'other', joint: 'left-wrist' });
    expect(await todayOf(later(1))).toBe('as-planned');
    await pauseAt(later(2), { ...plainPause, cause: 'other', joint: 'right-knee' });
    expect(await todayOf(later(3))).toBe('none');
  });

  it('is asked about from its day on and not before', async () => {
    await pauseAt(morning, plainPause);
    const kindsOn = async (at: number) => {
      const { lines } = await clinicianAt(at).worklist.list({});
      return lines.flatMap(({ item, others }) => [item, ...others]).map(({ kind }) => kind);
    };
    const dayMs = 24 * 60 * minute;
    expect(await kindsOn(morning + 13 * dayMs)).not.toContain('resume-due');
    expect(await kindsOn(morning + 14 * dayMs)).toContain('resume-due');
  });
});

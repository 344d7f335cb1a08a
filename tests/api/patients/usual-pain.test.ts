/** Usual pain in force: it follows better mornings by itself, and a rise holds the dose until it is acknowledged. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs as day, workingPatient } from '#tests/support/working-patient.ts';

const hour = 3_600_000;

describe('the usual pain in force', () => {
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

  /** One answer each morning from the first day after signing on. */
  const mornings = async (pains: readonly number[]): Promise<number> => {
    for (const [place, pain] of pains.entries()) {
      await work.answeredMorning(start + (place + 1) * day - 2 * hour, pain);
    }
    return start + pains.length * day;
  };
  const baselinesAt = async (now: number) =>
    (await work.clinicianAt(now).clinician.review.get({ patientId })).record.baselines;
  const set = (now: number, usualPain: number, more: object = {}) =>
    work.clinicianAt(now).clinician.review.setBaseline({
      patientId,
      baseline: {
        joint: 'right-knee',
        usualPain,
        usualPainTop: usualPain,
        acceptablePainLimit: 6,
        usualStiffnessMinutes: 10,
        usualSwelling: 'none',
        usualEffusion: 'zero',
        reason: 'Looked at together',
        ...more,
      },
    });
  const rulesAt = async (now: number) =>
    (await work.clinicianAt(now).clinician.review.get({ patientId })).decisions
      .at(-1)!
      .reasons.map(({ rule }) => rule);

  it('comes down with ten mornings 1.5 under it, not with nine, and says that no clinician set it', async () => {
    const before = await mornings(Array(9).fill(0));
    expect((await baselinesAt(before)).map(({ usualPain }) => usualPain)).toEqual([2]);
    await work.answeredMorning(before + day - 2 * hour, 0);
    const [first, followed, ...more] = await baselinesAt(before + day);
    expect(more).toEqual([]);
    expect(followed).toMatchObject({
      usualPain: 0,
      usualPainTop: 0,
      acceptablePainLimit: 5,
      setBy: 'the decision rules',
      tightenedFrom: first!.setOn,
      dueForReview: false,
    });
  });

  it('goes with the entry it came from where that was made in error', async () => {
    const now = await mornings(Array(10).fill(0));
    const { clinician: staff } = work.clinicianAt(now);
    const entries = await staff.corrections.entries({ patientId, subject: 'baseline' });
    const own = entries.at(-1)!;
    await staff.corrections.enterInError({
      patientId,
      subject: 'baseline',
      subjectId: own.id,
      reason: 'Another patient',
      confirmed: true,
    });
    expect(await baselinesAt(now)).toEqual([]);
  });

  it('risen by 2 since the plan began holds the dose until a clinician acknowledges it, risen by 1 does not', async () => {
    const now = await mornings([2, 3, 4]);
    await set(now, 3);
    await work.answeredMorning(now + day - 2 * hour, 3);
    expect(await rulesAt(now + day)).not.toContain('B3');
    await set(now + day, 4);
    await work.answeredMorning(now + 2 * day - 2 * hour, 4);
    expect(await rulesAt(now + 2 * day)).toContain('B3');
    await set(now + 2 * day, 4, { riseAcknowledged: true });
    await work.answeredMorning(now + 3 * day - 2 * hour, 4);
    expect(await rulesAt(now + 3 * day)).not.toContain('B3');
  });
});

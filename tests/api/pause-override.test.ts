/** A pause is not lifted by whoever finds an open desk. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { asPerson } from '#tests/support/callers.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

const minute = 60_000;
/** Half past seven on the morning after. */
const morning = Date.parse('2026-03-03T07:30:00Z');

describe('overriding a decision', () => {
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

  const overrideAfter = async (minutesSinceProof: number, decision: string) => {
    const access = accessOf(store, 'a', 'clinician-a', morning + minute, 'Clinician A');
    const provedAt = Date.now() - minutesSinceProof * minute;
    const { review } = asPerson(access, { provedAt }).clinician;
    const { decisions } = await review.get({ patientId });
    const newest = decisions.findLast((row) => row.decision === decision)!;
    const response = {
      decisionId: newest.id,
      kind: 'override',
      decision: 'hold',
      reason: 'Seen at the clinic, the joint is calm',
      until: '2026-03-06',
    };
    return review.respond({ patientId, response });
  };

  const answers = () =>
    (store.reader.client.prepare('SELECT count(*) AS n FROM decision_response').get() as { n: number }).n;

  it('that is a pause asks for the passphrase again after ten minutes; refused, nothing is written and it is audited', async () => {
    await work.didSession(morning - 13 * 3_600_000, { before: 2, during: 10, after: 4 });
    await work.answeredMorning(morning, 2);
    await expect(overrideAfter(11, 'pause')).rejects.toMatchObject({ problem: 'fresh-sign-in' });
    expect(answers()).toBe(0);
    await flushReads(store);
    const refused = store.reader.client
      .prepare("SELECT subject FROM audit WHERE clinic_id = 'a' AND act = 'refused'")
      .all();
    expect(refused).toEqual([{ subject: 'clinician.review.respond' }]);
    await overrideAfter(9, 'pause');
    expect(answers()).toBe(1);
  });

  it('that is a hold is part of the ordinary work and does not', async () => {
    await work.answeredMorning(morning, 2);
    await overrideAfter(11, 'hold');
    expect(answers()).toBe(1);
  });
});

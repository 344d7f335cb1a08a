import { expect, it } from 'vitest';
import { preApprovalsOf, signPreApproval } from '#data/episode/limits-and-pre-approvals.ts';
import { signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

it('steps signed for ahead keep the clinic’s day of signing, whatever the day is in UTC', async () => {
  const store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  const { itemId } = await signedExercise(clinician, patientId);
  // An evening five hours behind UTC: there it is the next day already.
  const evening = { ...clinician, now: Date.parse('2026-03-10T01:00:00Z'), day: '2026-03-09' };
  await signPreApproval(evening, patientId, itemId, 2, 14);
  expect(await preApprovalsOf(clinician, patientId)).toMatchObject([
    { signedAt: evening.now, signedDay: '2026-03-09' },
  ]);
  store.close();
});

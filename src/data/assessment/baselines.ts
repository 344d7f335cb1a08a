/** Baselines of a joint; each is a new row and the newest counts. */
import { randomUUID } from 'node:crypto';
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { recordOf } from '../patients/record.ts';
import { baseline } from '../schema/schema.ts';

export type BaselineValues = Omit<
  Baseline,
  'setOn' | 'setBy' | 'dueForReview' | 'usualFatigue' | 'morningSpread' | 'correctedPending' | 'tightenedFrom'
>;

/** What the diary says beside the values a clinician sets: usual tiredness and the scatter of the mornings. */
const fromDiary = async (access: Access, patientId: string, joint: Joint) => {
  const record = await recordOf(access, patientId);
  const answer = record && proposeBaseline(record, joint, access.day);
  return answer?.ready
    ? { usualFatigue: answer.proposal.usualFatigue, morningSpread: answer.proposal.morningSpread }
    : { usualFatigue: null, morningSpread: null };
};

export const setBaseline = (
  access: Access,
  patientId: string,
  values: BaselineValues,
  reason: string,
  /** The day the values speak of; an earlier one where they correct those set then. */
  setOn: Day = access.day,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(baseline).values({
      id,
      ...recordedFor(access, patientId),
      ...values,
      ...(await fromDiary(access, patientId, values.joint)),
      setOn,
      dueForReview: false,
      byName: access.actorName,
      reason,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'baseline', { subjectId: id, patientId, detail: { joint: values.joint } });
    return id;
  });

/** Written by the engine after one a clinician set; why is said in the row. */
const ownRows = {
  flagged: {
    reason: 'The mornings lie well under the usual pain of the baseline.',
    audit: 'baseline-due-for-review',
  },
  tightened: {
    reason:
      'The mornings of 14 days lie well under the usual pain before; it follows them and never rises by itself.',
    audit: 'baseline-tightened',
  },
} as const;

/**
 * Stores a baseline the engine renewed: marked as due for review, which only a new one by a clinician ends, or
 * brought down to better mornings, which stands until a clinician sets another.
 */
export const storeRenewed = (
  access: Access,
  patientId: string,
  { setBy, ...values }: Baseline,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const isFlagged = values.dueForReview;
    const { reason, audit } = ownRows[isFlagged ? 'flagged' : 'tightened'];
    const byName = isFlagged ? setBy : 'the decision rules';
    await tx.insert(baseline).values({ id, ...recordedFor(access, patientId), ...values, byName, reason });
    changed(access, patientId);
    await auditWrite(tx, access, audit, { subjectId: id, patientId, detail: { joint: values.joint } });
    return id;
  });

/**
 * What the decisions ask of the clinic: for each joint the newest, or the newest pause that nobody has
 * overruled, which later good answers do not lift. Accepting merely agrees: a pause stays asked for until it
 * is overruled, a contact the same day until somebody was reached.
 */
import type { ContactAttempt } from '../danger/danger.ts';
import {
  type ClinicianAnswer,
  type MadeDecision,
  withoutWarningSign,
} from '../decision/decisions-in-force.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';

export interface Ask
  extends Pick<MadeDecision, 'id' | 'joint' | 'decision' | 'contact' | 'evaluatedAt' | 'reasons'> {
  /** null = still asked for; a day = overridden until then; "for-good" = answered. */
  readonly settled: Day | 'for-good' | null;
}

const newestAnswers = (answers: readonly ClinicianAnswer[]): ReadonlyMap<string, ClinicianAnswer> =>
  new Map(answers.toSorted((a, b) => a.answeredAt - b.answeredAt).map((row) => [row.decisionId, row]));

const isUrgent = ({ contact }: Pick<MadeDecision, 'contact'>): boolean =>
  contact === 'emergency' || contact === 'same-day';

const settledBy = (
  row: MadeDecision,
  answer: ClinicianAnswer | undefined,
  contacts: readonly ContactAttempt[],
): Ask['settled'] => {
  if (answer?.kind === 'override') return answer.until ?? 'for-good';
  if (row.decision === 'pause') return null;
  if (isUrgent(row)) {
    const isReached = contacts.some((one) => one.reached !== 'nobody' && one.decisionIds.includes(row.id));
    return isReached ? 'for-good' : null;
  }
  return answer ? 'for-good' : null;
};

const isOpenPause = (row: MadeDecision, answers: ReadonlyMap<string, ClinicianAnswer>): boolean =>
  row.decision === 'pause' && answers.get(row.id)?.kind !== 'override';

export const asksOf = (
  decisions: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
  contacts: readonly ContactAttempt[],
): readonly Ask[] => {
  const newest = newestAnswers(answers);
  const byJoint = new Map<Joint, MadeDecision>();
  const oldestFirst = decisions.toSorted((a, b) => a.evaluatedAt - b.evaluatedAt || (a.id < b.id ? -1 : 1));
  for (const row of oldestFirst.map(withoutWarningSign)) {
    const known = byJoint.get(row.joint);
    if (!(known && isOpenPause(known, newest)) || row.decision === 'pause') byJoint.set(row.joint, row);
  }
  return [...byJoint.values()].map((row) => ({
    id: row.id,
    joint: row.joint,
    decision: row.decision,
    contact: row.contact,
    evaluatedAt: row.evaluatedAt,
    reasons: row.reasons,
    settled: settledBy(row, newest.get(row.id), contacts),
  }));
};

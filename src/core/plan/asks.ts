/**
 * What the decisions ask of the clinic: for each joint the newest, or the newest pause that nobody has
 * overruled, which later good answers do not lift. Accepting merely agrees: a pause stays asked for until it
 * is overruled, a contact the same day until somebody was reached.
 */
import type { ContactAttempt } from '../danger/danger.ts';
import {
  type ClinicianAnswer,
  type DecisionInForce,
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

/** Whether a contact about a decision has reached somebody. */
export const isReached = (contacts: readonly ContactAttempt[], decisionId: string): boolean =>
  contacts.some((one) => one.reached !== 'nobody' && one.decisionIds.includes(decisionId));

const settledBy = (
  row: MadeDecision,
  answer: ClinicianAnswer | undefined,
  contacts: readonly ContactAttempt[],
): Ask['settled'] => {
  // A call for today is settled by the call alone, whatever else was decided.
  if (isUrgent(row) && row.decision !== 'pause' && !isReached(contacts, row.id)) return null;
  if (answer?.kind === 'override') return answer.until ?? 'for-good';
  if (row.decision === 'pause') return null;
  return answer || isUrgent(row) ? 'for-good' : null;
};

/** Of a joint: the pause that holds it back, or the newest decision; a pause under an override is overruled with it. */
const askOf = (
  rows: readonly MadeDecision[],
  answers: ReadonlyMap<string, ClinicianAnswer>,
  inForce: DecisionInForce | undefined,
): { readonly row: MadeDecision; readonly answer: ClinicianAnswer | undefined } => {
  const newest = rows.at(-1)!;
  const holding =
    inForce?.decision === 'pause' && inForce.from !== 'clinician'
      ? rows.find(({ id }) => id === inForce.decisionId)
      : undefined;
  const row = holding ?? newest;
  const isUnderOverride = row.decision === 'pause' && inForce?.from === 'clinician';
  return { row, answer: answers.get(isUnderOverride ? inForce.decisionId : row.id) };
};

export const asksOf = (
  decisions: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
  contacts: readonly ContactAttempt[],
  joints: ReadonlyMap<Joint, DecisionInForce>,
): readonly Ask[] => {
  const newest = newestAnswers(answers);
  const oldestFirst = decisions.toSorted((a, b) => a.evaluatedAt - b.evaluatedAt || (a.id < b.id ? -1 : 1));
  const byJoint = new Map<Joint, MadeDecision[]>();
  for (const row of oldestFirst.map(withoutWarningSign)) {
    const known = byJoint.get(row.joint);
    if (known) known.push(row);
    else byJoint.set(row.joint, [row]);
  }
  return [...byJoint].map(([joint, rows]) => {
    const { row, answer } = askOf(rows, newest, joints.get(joint));
    return {
      id: row.id,
      joint,
      decision: row.decision,
      contact: row.contact,
      evaluatedAt: row.evaluatedAt,
      reasons: row.reasons,
      settled: settledBy(row, answer, contacts),
    };
  });
};

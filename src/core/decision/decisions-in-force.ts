/**
 * What stands for each joint on a day, from the decisions as made and what clinicians answered.
 *
 * Three things stand before the newest decision. A pause stays until a clinician has overruled it:
 * later good answers do not lift it. An override holds until its last day. A pause for a rule the
 * clinician had not seen when overruling is a new danger and stands before the override; what another
 * such rule leaves of today, and the contact it asks for, stand beside the override while they are newest.
 *
 * Warning signs are not decided on here: a sign has a life of its own (`danger/`), which no later answer
 * and no override ends. What else a decision with a sign found stands here as it was found, at most a hold.
 *
 * An amended answer loosens nothing by itself: while the amended entry is what is judged, the decision
 * before it stands beside the new one, until a clinician has answered that.
 */

import type { Joint } from '../exercises/joints.ts';
import { type Day, daysBetween } from '../time/day.ts';
import type { Answers, DecisionWord, Today } from './answers.ts';
import { mostCautious } from './decide.ts';
import { inForceUntilAcknowledged } from './scope.ts';

export interface MadeDecision extends Answers {
  readonly id: string;
  readonly joint: Joint;
  readonly evaluatedAt: number;
  /** The entry that made the engine look. */
  readonly cause: 'session' | 'morning' | 'amendment' | 'clinician';
  readonly sessionId: string | null;
  readonly morningId: string | null;
}

export interface ClinicianAnswer {
  readonly decisionId: string;
  readonly kind: 'accept' | 'override';
  readonly decision: DecisionWord | null;
  readonly until: Day | null;
  readonly answeredAt: number;
}

export interface DecisionInForce extends Omit<Answers, 'reasons'> {
  readonly joint: Joint;
  readonly from: 'engine' | 'clinician' | 'open-pause';
  /** The decision it rests on. */
  readonly decisionId: string;
}

const todayUnder: Readonly<Record<DecisionWord, Today>> = {
  pause: 'none',
  'ease-back': 'bad-day',
  hold: 'as-planned',
  progress: 'as-planned',
};

const warningSignRule = 'R1';

/** Whether a decision rests on a warning sign. */
export const isOfWarningSign = ({ reasons }: Pick<Answers, 'reasons'>): boolean =>
  reasons.some(({ rule }) => rule === warningSignRule);

/** What a decision leaves beside its warning sign: the other rules that fired, and never a step up. */
export const withoutWarningSign = <R extends Answers>(row: R): R => {
  if (!isOfWarningSign(row)) return row;
  const reasons = row.reasons.filter(({ rule }) => rule !== warningSignRule);
  return { ...row, ...mostCautious([...reasons.map(({ effect }) => effect), { decision: 'hold' }]), reasons };
};

const asMade = (row: MadeDecision, from: DecisionInForce['from']): DecisionInForce => ({
  joint: row.joint,
  decision: row.decision,
  largestStep: row.largestStep,
  today: row.today,
  contact: row.contact,
  from,
  decisionId: row.id,
});

/** The newest answer to a decision, where it overrules; accepting it afterwards takes the override back. */
const overruled = (answers: readonly ClinicianAnswer[], id: string): readonly ClinicianAnswer[] => {
  const newest = answers
    .filter((answer) => answer.decisionId === id)
    .toSorted((a, b) => a.answeredAt - b.answeredAt)
    .at(-1);
  return newest?.kind === 'override' ? [newest] : [];
};

/** The newest pause that no clinician has ever overruled; null when there is none. */
const openPause = (made: readonly MadeDecision[], answers: readonly ClinicianAnswer[]): MadeDecision | null =>
  made.filter((row) => row.decision === 'pause' && overruled(answers, row.id).length === 0).at(-1) ?? null;

/** The newest decision, with those before an amendment nobody has answered beside it while that is what is judged. */
const sinceAmended = (
  made: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
): DecisionInForce => {
  const newest = made.at(-1)!;
  const isOpen = (row: MadeDecision): boolean =>
    row.cause === 'amendment' && !answers.some((one) => one.decisionId === row.id);
  const isJudged = ({ id, sessionId, morningId }: MadeDecision): boolean =>
    id === newest.id || (sessionId === newest.sessionId && morningId === newest.morningId);
  const place = made.findLastIndex((row) => isOpen(row) && isJudged(row));
  if (place < 0) return asMade(newest, 'engine');
  const first = made.slice(0, place).findLastIndex((row) => !isOpen(row));
  const beside = made
    .slice(Math.max(0, first), place)
    .filter((row) => overruled(answers, row.id).length === 0);
  const { decision, largestStep, today, contact } = beside.reduce<Omit<Answers, 'reasons'>>(
    (later, earlier) => inForceUntilAcknowledged(earlier, later),
    newest,
  );
  return {
    ...asMade(newest, 'engine'),
    decision,
    largestStep,
    today,
    contact,
  };
};

interface Override {
  readonly answer: ClinicianAnswer;
  readonly of: MadeDecision;
}

const overrideOn = (
  made: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
  day: Day,
): Override | null => {
  const holding = made.flatMap((of) =>
    overruled(answers, of.id)
      .filter((answer) => answer.until !== null && daysBetween(day, answer.until) >= 0)
      .map((answer) => ({ answer, of })),
  );
  return holding.sort((a, b) => a.answer.answeredAt - b.answer.answeredAt).at(-1) ?? null;
};

const unseenReasons = (row: MadeDecision, { of }: Override): Answers['reasons'] => {
  const seen = new Set(of.reasons.map(({ rule }) => rule));
  return row.reasons.filter(({ rule }) => !seen.has(rule));
};

/** Whether a decision pauses for a rule that the overruled one did not show. */
const isNewDanger = (row: MadeDecision, override: Override): boolean => {
  return unseenReasons(row, override).some(({ effect }) => effect.decision === 'pause');
};

const overridden = (override: Override): DecisionInForce => {
  const decision = override.answer.decision ?? 'hold';
  return {
    joint: override.of.joint,
    decision,
    largestStep: decision === 'progress' ? 'load' : null,
    today: todayUnder[decision],
    contact: 'none',
    from: 'clinician',
    decisionId: override.of.id,
  };
};

/** What the newest decision leaves of today for rules that the overruled one did not show. */
const besideOverride = (override: Override, newest: MadeDecision): DecisionInForce => {
  const held = overridden(override);
  if (newest.evaluatedAt <= override.answer.answeredAt) return held;
  const unseen = unseenReasons(newest, override).map(({ effect }) => effect);
  const { today, contact } = mostCautious([...unseen, { today: held.today, contact: held.contact }]);
  return { ...held, today, contact };
};

const inForceOf = (
  all: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
  day: Day,
): DecisionInForce => {
  const made = all.map(withoutWarningSign);
  const pause = openPause(made, answers);
  const override = overrideOn(made, answers, day);
  const isPauseLater = pause !== null && (!override || pause.evaluatedAt > override.of.evaluatedAt);
  if (pause && isPauseLater && (!override || isNewDanger(pause, override))) {
    return asMade(pause, pause.id === made.at(-1)!.id ? 'engine' : 'open-pause');
  }
  return override ? besideOverride(override, made.at(-1)!) : sinceAmended(made, answers);
};

/** Decisions oldest first; every open pause must be among them, however old. */
export const decisionsInForce = (
  decisions: readonly MadeDecision[],
  answers: readonly ClinicianAnswer[],
  day: Day,
): ReadonlyMap<Joint, DecisionInForce> => {
  const byJoint = new Map<Joint, MadeDecision[]>();
  for (const row of decisions) {
    const known = byJoint.get(row.joint);
    if (known) known.push(row);
    else byJoint.set(row.joint, [row]);
  }
  return new Map([...byJoint].map(([joint, made]) => [joint, inForceOf(made, answers, day)]));
};

/**
 * Scope is the joint. Facts are gathered per joint and each prescribed exercise takes the most cautious
 * answer over the joints it loads: a sore knee does not hold an arm, two sore joints under one exercise
 * give the lower answer, and a red flag anywhere stops everything.
 */

import type { Joint } from '../exercises/joints.ts';
import type { PatientRecord, PrescriptionVersion } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { dayNumber } from '../time/day.ts';
import type { Answers, Contact, Reason } from './answers.ts';
import { contactRank, decide, mostCautious } from './decide.ts';
import { countUpTo } from './facts/count-up-to.ts';
import { evaluationContext } from './facts/evaluation-context.ts';
import type { Facts } from './facts/facts.ts';
import { factsSeen } from './facts/facts-from-record.ts';
import type { RecordIndex } from './facts/indexed-record.ts';
import type { Judged, Moment } from './facts/judged-session.ts';
import { indexRecord } from './facts/record-index.ts';
import { ruleById } from './rules/table.ts';
import { engineSettingValues } from './settings.ts';

interface JointReason extends Reason {
  readonly joint: Joint;
}

export interface JointEvaluation {
  readonly joint: Joint;
  readonly state: Judged['state'];
  readonly sessionId: string | null;
  readonly morningId: string | null;
  readonly facts: Facts;
  readonly answers: Answers;
}

export interface ItemEvaluation extends Omit<Answers, 'reasons'> {
  readonly itemId: string;
  readonly version: PrescriptionVersion;
  /** Joints whose answers gate the line. */
  readonly limitingJoints: readonly Joint[];
  readonly reasons: readonly JointReason[];
  /** A clinician lets it progress where the rules would not. */
  readonly isOverruled?: true;
}

export interface Evaluation {
  readonly at: Moment;
  readonly joints: readonly JointEvaluation[];
  readonly items: readonly ItemEvaluation[];
  /** A red flag was told: nothing is offered, care advice is shown at once. */
  readonly redFlag: boolean;
  /** Most urgent over all joints. */
  readonly contact: Contact;
}

/** The version of each line in force at an instant, in the order of their ids. */
const versionsInForce = (record: PatientRecord, instant: number): readonly PrescriptionVersion[] => {
  const byItem = new Map<string, PrescriptionVersion>();
  for (const version of record.prescriptions) {
    if (version.signedAt > instant) continue;
    const known = byItem.get(version.itemId);
    if (!known || version.version > known.version) byItem.set(version.itemId, version);
  }
  // What has ended is over: an older version does not come back by it.
  return [...byItem.values()]
    .filter(({ endedAt }) => endedAt === null || endedAt > instant)
    .sort((a, b) => (a.itemId < b.itemId ? -1 : 1));
};

const began = (one: { readonly began: number }): number => one.began;

/** Days back in which a joint that was asked about counts as followed. */
const askedWindow = 28;

/** Whether the patient is asked about a joint: one of those followed, or one of a session lately. */
const askedAt = (index: RecordIndex, at: Moment): ((joint: Joint) => boolean) => {
  const from = dayNumber(at.day) - askedWindow;
  return (joint) => {
    if (index.record.followedJoints.includes(joint)) return true;
    for (let place = countUpTo(index.sessions, at.instant, began) - 1; place >= 0; place--) {
      const { session, day } = index.sessions[place]!;
      if (day < from) return false;
      if (session.recordedAt <= at.instant && session.joints.some((one) => one.joint === joint)) return true;
    }
    return false;
  };
};

/**
 * Of the joints a line loads, those the patient is asked about. A line none of whose joints is asked
 * about is gated by all of them, which have no answers and therefore hold it: unknown never progresses.
 */
const gatingJoints = (version: PrescriptionVersion, isAsked: (joint: Joint) => boolean): readonly Joint[] => {
  const followed = version.joints.filter(isAsked);
  return followed.length > 0 ? followed : version.joints;
};

const evaluateJoint = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settings: SettingValues,
): JointEvaluation => {
  const context = evaluationContext(record, joint, at, engineSettingValues(settings));
  const { judged } = context;
  const facts = factsSeen(context);
  return {
    joint,
    state: judged.state,
    sessionId: judged.session?.session.id ?? null,
    morningId: judged.nextMorning?.morning.id ?? null,
    facts,
    answers: decide(facts, settings),
  };
};

const inTableOrder = (a: JointReason, b: JointReason): number =>
  (ruleById.get(a.rule)?.order ?? 0) - (ruleById.get(b.rule)?.order ?? 0) || (a.joint < b.joint ? -1 : 1);

const stopsAll = 'R1';

/** Written out field by field: this runs for every reason of every joint. */
const reasonsOf = ({ joint, answers }: JointEvaluation): readonly JointReason[] =>
  answers.reasons.map(({ rule, observed, threshold, support, effect }) => ({
    rule,
    observed,
    threshold,
    support,
    effect,
    joint,
  }));

type ByJoints = Omit<ItemEvaluation, 'itemId' | 'version'>;

const isSame = (a: readonly Joint[], b: readonly Joint[]): boolean =>
  a.length === b.length && a.every((joint, place) => joint === b[place]);

/** What a set of gating joints answers together; most lines of a patient are gated by the same ones. */
const gating = (joints: readonly JointEvaluation[]): ((limitingJoints: readonly Joint[]) => ByJoints) => {
  const said = joints.map(reasonsOf);
  const known: ByJoints[] = [];
  return (limitingJoints) => {
    const before = known.find((one) => isSame(one.limitingJoints, limitingJoints));
    if (before) return before;
    const answered = joints
      .map(({ joint }, place) =>
        limitingJoints.includes(joint) ? said[place]! : said[place]!.filter(({ rule }) => rule === stopsAll),
      )
      .filter((reasons) => reasons.length > 0);
    // The reasons of one joint stand in the table's order already.
    const reasons = answered.length === 1 ? answered[0]! : answered.flat().sort(inTableOrder);
    const limited = { limitingJoints, ...mostCautious(reasons.map((reason) => reason.effect)), reasons };
    known.push(limited);
    return limited;
  };
};

export const evaluate = (record: PatientRecord, at: Moment, settingValues?: SettingValues): Evaluation => {
  const settings = engineSettingValues(settingValues);
  const isAsked = askedAt(indexRecord(record), at);
  const versions = versionsInForce(record, at.instant).map(
    (version) => [version, gatingJoints(version, isAsked)] as const,
  );
  const wanted = new Set<Joint>(record.followedJoints);
  for (const [, limitingJoints] of versions) for (const joint of limitingJoints) wanted.add(joint);
  const all = [...wanted].sort().map((joint) => evaluateJoint(record, joint, at, settings));
  const answerOf = gating(all);
  const items = versions.map(([version, limitingJoints]) => ({
    itemId: version.itemId,
    version,
    ...answerOf(limitingJoints),
  }));
  const contacts = all.map((one) => one.answers.contact);
  return {
    at,
    joints: all,
    items,
    redFlag: all.some((one) => one.answers.reasons.some((reason) => reason.rule === stopsAll)),
    contact: contacts.reduce<Contact>((a, b) => (contactRank[b] < contactRank[a] ? b : a), 'none'),
  };
};

/**
 * Of two decisions on the same thing, as after an amendment: both are kept and this one is in force
 * until a clinician has acknowledged. An amendment never loosens by itself.
 */
export const inForceUntilAcknowledged = (
  earlier: Omit<Answers, 'reasons'>,
  later: Omit<Answers, 'reasons'>,
): Omit<Answers, 'reasons'> =>
  mostCautious([
    { ...earlier, largestStep: earlier.largestStep ?? undefined },
    { ...later, largestStep: later.largestStep ?? undefined },
  ]);

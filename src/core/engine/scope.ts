/**
 * Scope is the joint. Facts are gathered per joint and each prescribed exercise takes the most cautious
 * answer over the joints it loads: a sore knee does not hold an arm, two sore joints under one exercise
 * give the lower answer, and a red flag anywhere stops everything.
 */

import type { ChoiceValues } from '../clinic-choice.ts';
import { dayNumber } from '../day.ts';
import type { Joint } from '../joints.ts';
import type { PatientRecord, PrescriptionVersion } from '../model/record.ts';
import type { Answers, Contact, Reason } from './answers.ts';
import { engineChoiceValues } from './choices.ts';
import { countUpTo } from './count-up-to.ts';
import { contactRank, decide, mostCautious } from './decide.ts';
import type { Facts } from './facts.ts';
import { factsSeen } from './facts-from-record.ts';
import type { Judged, Moment } from './judged-session.ts';
import { lookAt } from './look.ts';
import { indexRecord, type RecordIndex } from './record-index.ts';
import { ruleById } from './rules/table.ts';

export interface JointReason extends Reason {
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

export interface LineEvaluation extends Omit<Answers, 'reasons'> {
  readonly itemId: string;
  readonly version: PrescriptionVersion;
  /** Joints whose answers gate the line. */
  readonly gatedBy: readonly Joint[];
  readonly reasons: readonly JointReason[];
}

export interface Evaluation {
  readonly at: Moment;
  readonly joints: readonly JointEvaluation[];
  readonly lines: readonly LineEvaluation[];
  /** A red flag was told: nothing is offered, care advice is shown at once. */
  readonly redFlag: boolean;
  /** Most urgent over all joints. */
  readonly contact: Contact;
}

/** The version of each line in force at an instant, in the order of their ids. */
export const versionsInForce = (record: PatientRecord, instant: number): readonly PrescriptionVersion[] => {
  const byLine = new Map<string, PrescriptionVersion>();
  for (const version of record.prescriptions) {
    if (version.signedAt > instant || (version.endedAt !== null && version.endedAt <= instant)) continue;
    const known = byLine.get(version.itemId);
    if (!known || version.version > known.version) byLine.set(version.itemId, version);
  }
  return [...byLine.values()].sort((a, b) => (a.itemId < b.itemId ? -1 : 1));
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
  choices: ChoiceValues,
): JointEvaluation => {
  const look = lookAt(record, joint, at, engineChoiceValues(choices));
  const { judged } = look;
  const facts = factsSeen(look);
  return {
    joint,
    state: judged.state,
    sessionId: judged.session?.session.id ?? null,
    morningId: judged.nextMorning?.morning.id ?? null,
    facts,
    answers: decide(facts, choices),
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

type Gated = Omit<LineEvaluation, 'itemId' | 'version'>;

const isSame = (a: readonly Joint[], b: readonly Joint[]): boolean =>
  a.length === b.length && a.every((joint, place) => joint === b[place]);

/** What a set of gating joints answers together; most lines of a patient are gated by the same ones. */
const gating = (joints: readonly JointEvaluation[]): ((gatedBy: readonly Joint[]) => Gated) => {
  const said = joints.map(reasonsOf);
  const known: Gated[] = [];
  return (gatedBy) => {
    const before = known.find((one) => isSame(one.gatedBy, gatedBy));
    if (before) return before;
    const heard = joints
      .map(({ joint }, place) =>
        gatedBy.includes(joint) ? said[place]! : said[place]!.filter(({ rule }) => rule === stopsAll),
      )
      .filter((reasons) => reasons.length > 0);
    // The reasons of one joint stand in the table's order already.
    const reasons = heard.length === 1 ? heard[0]! : heard.flat().sort(inTableOrder);
    const gated = { gatedBy, ...mostCautious(reasons.map((reason) => reason.effect)), reasons };
    known.push(gated);
    return gated;
  };
};

export const evaluate = (record: PatientRecord, at: Moment, choiceValues?: ChoiceValues): Evaluation => {
  const choices = engineChoiceValues(choiceValues);
  const isAsked = askedAt(indexRecord(record), at);
  const versions = versionsInForce(record, at.instant).map(
    (version) => [version, gatingJoints(version, isAsked)] as const,
  );
  const wanted = new Set<Joint>(record.followedJoints);
  for (const [, gatedBy] of versions) for (const joint of gatedBy) wanted.add(joint);
  const all = [...wanted].sort().map((joint) => evaluateJoint(record, joint, at, choices));
  const answerOf = gating(all);
  const lines = versions.map(([version, gatedBy]) => ({
    itemId: version.itemId,
    version,
    ...answerOf(gatedBy),
  }));
  const contacts = all.map((one) => one.answers.contact);
  return {
    at,
    joints: all,
    lines,
    redFlag: all.some((one) => one.answers.reasons.some((reason) => reason.rule === stopsAll)),
    contact: contacts.reduce<Contact>((a, b) => (contactRank[b] < contactRank[a] ? b : a), 'none'),
  };
};

/**
 * Of two decisions on the same thing, as after an amendment: both are kept and this one is in force
 * until a clinician has acknowledged. An amendment never loosens by itself.
 */
export const inForceUntilAcknowledged = (earlier: Answers, later: Answers): Omit<Answers, 'reasons'> =>
  mostCautious([
    { ...earlier, largestStep: earlier.largestStep ?? undefined },
    { ...later, largestStep: later.largestStep ?? undefined },
  ]);

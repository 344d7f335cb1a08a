/** The pages the next-morning answers need, and what each answer changes. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { QuestionId } from '#core/record/morning-questions.ts';
import type { Score, YesNo } from '../session/draft.ts';
import { forward, withAnswer, withoutUsual } from './morning-answers.ts';
import type { Either, JointMorning, MorningDraft } from './morning-draft.ts';
import { leftOpen, morningSteps } from './morning-steps.ts';
import { alike, each, flares, swollen } from './several-joints.ts';
import { asYesterday } from './usual-answers.ts';

export type MorningEvent =
  | { readonly type: 'go' | 'change'; readonly step: string }
  | { readonly type: 'next' }
  | { readonly type: 'answer'; readonly joint: Joint; readonly answer: Partial<JointMorning> }
  /** Of two joints at once: the one, the other, both, neither, or not known. */
  | { readonly type: 'swollen' | 'flares'; readonly joints: readonly Joint[] | 'unknown' }
  /** One of several joints that stand on one page. */
  | {
      readonly type: 'each';
      readonly id: QuestionId;
      readonly joint: Joint;
      readonly answer: Partial<JointMorning>;
    }
  /** The same answer for every joint the question is put to, or one by one. */
  | { readonly type: 'alike'; readonly id: QuestionId; readonly answer: Partial<JointMorning> | 'singly' }
  | { readonly type: 'fatigue'; readonly fatigue: Score }
  | { readonly type: 'other-joint'; readonly isWorse: YesNo }
  /** Another joint and extra pain relief at once. */
  | { readonly type: 'either'; readonly answer: Either }
  /** "usual-joints": the quiet joints, and not what is asked once for all. */
  | { readonly type: 'usual' | 'usual-joints' | 'not-usual' }
  | { readonly type: 'tick'; readonly ticked: readonly string[] }
  /** An empty list is "none of these" and sends the answers; a flag is asked about once more. */
  | { readonly type: 'flags'; readonly flags: readonly RedFlag[]; readonly now: number }
  | { readonly type: 'whole-list' }
  | { readonly type: 'confirm'; readonly isSlip: boolean; readonly now: number }
  | { readonly type: 'relief'; readonly relief: YesNo }
  | { readonly type: 'urine'; readonly urine: YesNo };

export const beginMorning = (
  from: Pick<
    MorningDraft,
    | 'entryId'
    | 'ownerId'
    | 'day'
    | 'zone'
    | 'asksStiffness'
    | 'asksSwelling'
    | 'swellingNotAsked'
    | 'asksFatigue'
    | 'asksOtherJoint'
    | 'joints'
    | 'isLate'
    | 'asksUrine'
    | 'enteredAs'
    | 'amends'
    | 'asYesterday'
    | 'signForm'
  >,
): MorningDraft => ({
  shape: 1,
  ...from,
  step: from.joints[0] ? `pain:${from.joints[0]}` : 'flags',
  isChanging: false,
  byJoint: {},
  isUsual: null,
  flags: null,
  ticked: [],
  relief: null,
  endedAt: null,
  toConfirm: null,
  slips: [],
  swollen: null,
  fatigue: null,
  otherJointWorse: null,
  either: null,
  alike: {},
});

/** Said of both at once; whoever is not sure is asked each by itself. */
const withEither = (draft: MorningDraft, answer: Either): MorningDraft =>
  answer === 'singly'
    ? {
        ...draft,
        either: 'singly',
        step: 'other-joint',
        isChanging: false,
        otherJointWorse: null,
        relief: null,
      }
    : forward({
        ...draft,
        either: 'together',
        otherJointWorse: answer === 'other-joint' || answer === 'both',
        relief: answer === 'relief' || answer === 'both',
      });

const toConfirm = (draft: MorningDraft, flags: readonly RedFlag[]): MorningDraft => ({
  ...draft,
  toConfirm: { flags, from: draft.step },
  step: 'confirm',
});

const confirmed = (draft: MorningDraft, isSlip: boolean, now: number): MorningDraft => {
  if (!draft.toConfirm) return draft;
  const { flags, from } = draft.toConfirm;
  const asked = { ...draft, toConfirm: null, ticked: [] };
  if (!isSlip) return { ...asked, flags, step: 'care', endedAt: now };
  const slips = [...new Set([...(draft.slips ?? []), ...flags])];
  return { ...asked, slips, step: from, ...(from === 'urine' ? { urine: null } : {}) };
};

const withFlags = (draft: MorningDraft, flags: readonly RedFlag[], now: number): MorningDraft => {
  if (flags.length > 0) return toConfirm(draft, flags);
  const open = leftOpen(draft);
  return open === undefined
    ? { ...draft, flags: [], step: 'done', endedAt: now }
    : { ...draft, step: open, isChanging: false };
};

const withUrine = (draft: MorningDraft, urine: YesNo): MorningDraft => {
  const told = { ...draft, urine };
  return urine === true ? toConfirm(told, ['dark-urine']) : forward(told);
};

const react = (draft: MorningDraft, event: MorningEvent): MorningDraft => {
  switch (event.type) {
    case 'go':
    case 'change':
      return morningSteps(draft).includes(event.step)
        ? { ...draft, step: event.step, isChanging: event.type === 'change', toConfirm: null }
        : draft;
    case 'next':
      return forward(draft);
    case 'answer':
      return withAnswer(draft, event.joint, event.answer);
    case 'swollen':
      return swollen(draft, event.joints);
    case 'flares':
      return flares(draft, event.joints);
    case 'alike':
      return alike(draft, event.id, event.answer);
    case 'fatigue':
      return forward({ ...draft, fatigue: event.fatigue });
    case 'other-joint':
      return forward({ ...draft, otherJointWorse: event.isWorse });
    case 'either':
      return withEither(draft, event.answer);
    case 'each':
      return each(draft, event.id, event.joint, event.answer);
    case 'usual':
      return asYesterday(draft, true);
    case 'usual-joints':
      return asYesterday(draft, false);
    case 'not-usual':
      return forward({
        ...(draft.isUsual === true ? withoutUsual(draft) : draft),
        isUsual: false,
        isChanging: false,
      });
    case 'tick':
      return { ...draft, ticked: event.ticked };
    case 'flags':
      return withFlags(draft, event.flags, event.now);
    case 'whole-list':
      return { ...draft, signForm: 'list' };
    case 'confirm':
      return confirmed(draft, event.isSlip, event.now);
    case 'relief':
      return { ...draft, relief: event.relief };
    case 'urine':
      return withUrine(draft, event.urine);
  }
};

export const morningReducer = (draft: MorningDraft, event: MorningEvent): MorningDraft =>
  draft.endedAt === null ? react(draft, event) : draft;

/** The pages of a morning check in order, worked out from the answers so far. */
import type { Joint } from '#core/exercises/joints.ts';
import { morningQuestions, type QuestionId } from '#core/record/morning-questions.ts';
import { isWhole, questionsOf } from './joint-questions.ts';
import {
  asksSwellingOf,
  fatigueOffered,
  jointMorning,
  lastOffered,
  type MorningDraft,
  otherJointOffered,
} from './morning-draft.ts';

/** Where two are followed some questions are asked of both on one page; of more, of all that are asked about. */
const areTwo = ({ joints }: MorningDraft): boolean => joints.length === 2;

const swellingSteps = (draft: MorningDraft): readonly string[] => {
  const asked = draft.joints.filter((joint) => asksSwellingOf(draft, joint));
  if (!areTwo(draft) || asked.length < 2) return asked.map((joint) => `swelling:${joint}`);
  // How much is asked of the joints that were named.
  return ['swollen', ...(draft.swollen ?? []).map((joint) => `swelling:${joint}`)];
};

/** The answers of yesterday that may stand for today; null = each is asked. */
export const offered = (draft: MorningDraft) => {
  const lasts = (lastOffered(draft) ?? []).filter((last) => isWhole(draft, last));
  const isEnough = lasts.length === draft.joints.length || draft.joints.length > 2;
  return isEnough && lasts.length > 0 ? lasts : null;
};

/** Joints whose answers after the pain are asked: none of those that were said to be as yesterday. */
export const askedInFull = (draft: MorningDraft): readonly Joint[] => {
  const quiet = draft.isUsual === true ? (offered(draft) ?? []) : [];
  return draft.joints.filter((joint) => !quiet.some((last) => last.joint === joint));
};

/** Everything after the pain was answered by one press. */
export const isAllUsual = (draft: MorningDraft): boolean =>
  draft.isUsual === true && askedInFull(draft).length === 0;

const isAsked = (draft: MorningDraft, id: QuestionId, joint: Joint): boolean =>
  questionsOf(draft, joint).some((question) => question.id === id);

const afterPain = ['stiffness', 'swelling', 'flare'] as const;

/** Of those asked about in full, the joints a question is put to. */
export const jointsAsked = (draft: MorningDraft, id: QuestionId): readonly Joint[] =>
  askedInFull(draft).filter((joint) => isAsked(draft, id, joint));

/** First of all of them at once, and one by one where they are not alike. */
const togetherSteps = (draft: MorningDraft): readonly string[] =>
  afterPain.flatMap((id) => {
    const joints = jointsAsked(draft, id);
    const singly = joints.map((joint) => `${id}:${joint}`);
    if (joints.length < 2) return singly;
    return [`all:${id}`, ...(draft.alike?.[id] === false ? singly : [])];
  });

const jointSteps = (draft: MorningDraft): readonly string[] =>
  draft.joints.length > 2
    ? togetherSteps(draft)
    : [
        ...draft.joints.flatMap((joint) =>
          isAsked(draft, 'stiffness', joint) ? [`stiffness:${joint}`] : [],
        ),
        ...swellingSteps(draft),
        ...(areTwo(draft) ? ['flares'] : draft.joints.map((joint) => `flare:${joint}`)),
      ];

/** The quiet joints are some of all, and what is asked once for all may be as yesterday with them. */
export const isOnceOffered = (draft: MorningDraft): boolean => {
  const lasts = offered(draft);
  return (
    lasts !== null &&
    draft.either !== undefined &&
    lasts.length < draft.joints.length &&
    (!draft.asksOtherJoint || otherJointOffered(draft))
  );
};

/** More than these are asked about together as alike or one by one: a page would be too long. */
const mostOnOnePage = 3;

export const areEachOnOnePage = (draft: MorningDraft, id: QuestionId): boolean =>
  jointsAsked(draft, id).length <= mostOnOnePage;

/** Another joint and extra pain relief: on one page where both are asked about. */
const eitherSteps = (draft: MorningDraft): readonly string[] => {
  const singly = [
    ...(draft.asksOtherJoint && !(isAllUsual(draft) && otherJointOffered(draft)) ? ['other-joint'] : []),
    ...(isAllUsual(draft) ? [] : ['relief']),
  ];
  if (draft.isOnceUsual) return [];
  if (singly.length < 2 || draft.either === undefined) return singly;
  return ['either', ...(draft.either === 'singly' ? singly : [])];
};

/** Asked once for all joints; what "as yesterday" has answered is left out. */
const onceSteps = (draft: MorningDraft): readonly string[] => [
  ...(draft.asksFatigue && !(isAllUsual(draft) && fatigueOffered(draft) !== null) ? ['fatigue'] : []),
  ...eitherSteps(draft),
];

const each = (draft: MorningDraft): readonly string[] => [
  ...(isAllUsual(draft) ? [] : jointSteps(draft)),
  ...onceSteps(draft),
];

/** The signs come last: their answer sends the check. */
export const morningSteps = (draft: MorningDraft): readonly string[] => [
  ...draft.joints.map((joint) => `pain:${joint}`),
  ...(draft.asksUrine ? ['urine'] : []),
  ...(offered(draft) ? ['usual'] : []),
  ...each(draft),
  'flags',
];

const isAnyOpen = (draft: MorningDraft, id: QuestionId): boolean =>
  jointsAsked(draft, id).some((joint) => isOpen(draft, id, joint));

const isOpen = (draft: MorningDraft, name: string, joint: string): boolean => {
  switch (name) {
    case 'relief':
      return draft.relief === null;
    case 'fatigue':
      return (draft.fatigue ?? null) === null;
    case 'other-joint':
      return (draft.otherJointWorse ?? null) === null;
    case 'either':
      return draft.either == null;
    case 'all':
      return draft.alike?.[joint as QuestionId] === undefined && isAnyOpen(draft, joint as QuestionId);
    case 'swollen':
      return draft.swollen == null;
    case 'flares':
      return draft.joints.some((one) => jointMorning(draft, one).flare === null);
    default: {
      const question = morningQuestions.find(({ id }) => id === name);
      return question !== undefined && jointMorning(draft, joint as Joint)[question.answer.name] === null;
    }
  }
};

/** The first question that was passed over, as after a change that opened others. */
export const leftOpen = (draft: MorningDraft): string | undefined =>
  each(draft).find((step) => {
    const [name = '', rest = ''] = step.split(':');
    return isOpen(draft, name, rest);
  });

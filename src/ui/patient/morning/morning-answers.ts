/** What an answer about a joint changes in the check, and the step that follows it. */
import type { Joint } from '#core/exercises/joints.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';
import { askedInFull, morningSteps } from './morning-steps.ts';

export const forward = (draft: MorningDraft): MorningDraft => {
  const steps = morningSteps(draft);
  if (draft.isChanging) return { ...draft, isChanging: false, step: 'flags' };
  return { ...draft, step: steps[steps.indexOf(draft.step) + 1] ?? 'flags' };
};

/** The wording in which this release asked what is answered. */
const sentBeside = (answer: Partial<JointMorning>): Partial<JointMorning> =>
  Object.assign(
    {},
    ...morningQuestions.map((question) => (answer[question.answer.name] === undefined ? {} : question.sent)),
  );

export const withAnswer = (
  draft: MorningDraft,
  joint: Joint,
  answer: Partial<JointMorning>,
): MorningDraft => {
  const answered = {
    ...draft,
    byJoint: {
      ...draft.byJoint,
      [joint]: { ...jointMorning(draft, joint), ...answer, ...sentBeside(answer) },
    },
  };
  // A pain that takes the short way away from a joint takes what it answered with it: nothing is inferred.
  const isTaken = draft.isUsual === true && askedInFull(answered).length > askedInFull(draft).length;
  return isTaken ? withoutUsual(answered) : answered;
};

export const withoutUsual = (draft: MorningDraft): MorningDraft => ({
  ...draft,
  isUsual: false,
  isOnceUsual: false,
  relief: null,
  fatigue: null,
  otherJointWorse: null,
  ...(draft.either === undefined ? {} : { either: null }),
  alike: {},
  swollen: null,
  byJoint: Object.fromEntries(
    draft.joints.map((joint) => {
      const { pain } = jointMorning(draft, joint);
      return [joint, { ...jointMorning({ ...draft, byJoint: {} }, joint), pain }];
    }),
  ),
});

/** Answers given for several joints at once. */
import type { Joint } from '#core/exercises/joints.ts';
import { morningQuestions, type QuestionId } from '#core/record/morning-questions.ts';
import { forward, withAnswer } from './morning-answers.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';
import { jointsAsked } from './morning-steps.ts';

/** One answer for all of them, or each asked by itself: what was said of one before is then asked again. */
export const alike = (
  draft: MorningDraft,
  id: QuestionId,
  answer: Partial<JointMorning> | 'singly',
): MorningDraft => {
  const told: MorningDraft = { ...draft, alike: { ...draft.alike, [id]: answer !== 'singly' } };
  const joints = jointsAsked(draft, id);
  if (answer !== 'singly')
    return forward(joints.reduce((one, joint) => withAnswer(one, joint, answer), told));
  const [first] = joints;
  return first === undefined ? forward(told) : { ...told, step: `${id}:${first}` };
};

/** One of several on the one page; after the last of them it goes on. */
export const each = (
  draft: MorningDraft,
  id: QuestionId,
  joint: Joint,
  answer: Partial<JointMorning>,
): MorningDraft => {
  const { [id]: _, ...others } = draft.alike ?? {};
  const told = withAnswer({ ...draft, alike: others }, joint, answer);
  const name = morningQuestions.find((question) => question.id === id)!.answer.name;
  return jointsAsked(told, id).every((one) => jointMorning(told, one)[name] !== null) ? forward(told) : told;
};

/** Those not named are answered with it; how much is asked of those that are. */
export const swollen = (draft: MorningDraft, joints: readonly Joint[] | 'unknown'): MorningDraft => {
  const named = joints === 'unknown' ? [] : joints;
  const answered = draft.joints.reduce((one, joint) => {
    const given = joints === 'unknown' ? 'unknown' : named.includes(joint) ? null : 'none';
    return withAnswer(one, joint, { swelling: given });
  }, draft);
  const [first] = named;
  const told = { ...answered, swollen: named };
  return first === undefined ? forward(told) : { ...told, step: `swelling:${first}` };
};

export const flares = (draft: MorningDraft, joints: readonly Joint[] | 'unknown'): MorningDraft =>
  forward(
    jointsAsked(draft, 'flare').reduce(
      (one, joint) =>
        withAnswer(one, joint, { flare: joints === 'unknown' ? 'unknown' : joints.includes(joint) }),
      draft,
    ),
  );

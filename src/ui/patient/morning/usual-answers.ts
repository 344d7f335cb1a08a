/** What "as yesterday" answers: the joints that are quiet, and what is asked once for all. */
import { usualAnswers, usualOfJoint } from './joint-questions.ts';
import { forward, withAnswer } from './morning-answers.ts';
import { fatigueOffered, type MorningDraft, otherJointOffered } from './morning-draft.ts';
import { isAllUsual, isOnceOffered, offered } from './morning-steps.ts';

/** Another joint and pain relief, said with the quiet joints. */
const withOnceUsual = (draft: MorningDraft): MorningDraft => ({
  ...draft,
  ...usualAnswers,
  ...(draft.asksOtherJoint ? { otherJointWorse: false } : {}),
});

/** Said to be as yesterday before, and not any more. */
const takenBack = (before: MorningDraft, draft: MorningDraft): MorningDraft =>
  before.isOnceUsual
    ? {
        ...draft,
        relief: null,
        otherJointWorse: null,
        ...(draft.either === undefined ? {} : { either: null }),
      }
    : draft;

/** `isWhole`: and not the joints alone. The statements on the page, taken as answered one by one: each was read and said to be right. */
export const asYesterday = (draft: MorningDraft, isWhole: boolean): MorningDraft => {
  const lasts = offered(draft);
  if (!lasts) return draft;
  const isOnceUsual = isWhole && isOnceOffered(draft);
  const answered = lasts.reduce((one, last) => withAnswer(one, last.joint, usualOfJoint(one, last)), draft);
  const usual = { ...answered, isUsual: true, isOnceUsual, isChanging: false };
  if (!isAllUsual(usual)) return forward(isOnceUsual ? withOnceUsual(usual) : takenBack(draft, usual));
  return forward({
    ...usual,
    ...usualAnswers,
    ...(otherJointOffered(draft) ? { otherJointWorse: false } : {}),
    ...(draft.asksFatigue ? { fatigue: fatigueOffered(draft) } : {}),
  });
};

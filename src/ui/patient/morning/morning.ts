/** The pages the next-morning answers need, and what each answer changes. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import type { YesNo } from '../session/draft.ts';
import { questionsOf, usualAnswers, usualOfJoint } from './joint-questions.ts';
import { type JointMorning, jointMorning, type LastMorning, type MorningDraft } from './morning-draft.ts';

export type MorningEvent =
  | { readonly type: 'go' | 'change'; readonly step: string }
  | { readonly type: 'next' }
  | { readonly type: 'answer'; readonly joint: Joint; readonly answer: Partial<JointMorning> }
  | { readonly type: 'usual'; readonly last: LastMorning }
  | { readonly type: 'not-usual' }
  | { readonly type: 'tick'; readonly ticked: readonly string[] }
  | { readonly type: 'flags'; readonly flags: readonly RedFlag[]; readonly now: number }
  | { readonly type: 'relief'; readonly relief: YesNo }
  | { readonly type: 'urine'; readonly urine: YesNo }
  | { readonly type: 'urine-done'; readonly now: number }
  | { readonly type: 'sent'; readonly now: number };

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
    | 'joints'
    | 'isLate'
    | 'asksUrine'
    | 'enteredAs'
    | 'amends'
  >,
): MorningDraft => ({
  shape: 1,
  ...from,
  step: from.asksUrine ? 'urine' : from.joints[0] ? `pain:${from.joints[0]}` : 'flags',
  isChanging: false,
  byJoint: {},
  isUsual: null,
  flags: null,
  ticked: [],
  relief: null,
  endedAt: null,
});

const each = (draft: MorningDraft): readonly string[] => [
  'flags',
  ...draft.joints.flatMap((joint) =>
    questionsOf(draft, joint).flatMap(({ id }) => (id === 'pain' ? [] : [`${id}:${joint}`])),
  ),
  'relief',
];

/** With the urine not known there is no short way past the list of warning signs. */
const hasShortWay = (draft: MorningDraft): boolean => draft.urine !== 'unknown';

const morningSteps = (draft: MorningDraft): readonly string[] => [
  ...(draft.asksUrine ? ['urine'] : []),
  ...draft.joints.map((joint) => `pain:${joint}`),
  ...(hasShortWay(draft) ? ['usual'] : []),
  ...(draft.isUsual === true && !draft.isChanging ? [] : each(draft)),
  'check',
];

const forward = (draft: MorningDraft): MorningDraft => {
  if (draft.isChanging) return { ...draft, isChanging: false, step: 'check' };
  const steps = morningSteps(draft);
  return { ...draft, step: steps[steps.indexOf(draft.step) + 1] ?? 'check' };
};

/** The wording in which this release asked what is answered. */
const sentBeside = (answer: Partial<JointMorning>): Partial<JointMorning> =>
  Object.assign(
    {},
    ...morningQuestions.map((question) => (answer[question.answer.name] === undefined ? {} : question.sent)),
  );

const withAnswer = (draft: MorningDraft, joint: Joint, answer: Partial<JointMorning>): MorningDraft => ({
  ...draft,
  byJoint: {
    ...draft.byJoint,
    [joint]: {
      ...jointMorning(draft, joint),
      ...answer,
      ...sentBeside(answer),
    },
  },
});

/** The statements on the page, taken as answered one by one: each was read and said to be right. */
const asUsual = (draft: MorningDraft, last: LastMorning): MorningDraft => {
  const answered = draft.joints.reduce(
    (one, joint) => withAnswer(one, joint, usualOfJoint(draft, joint, last)),
    draft,
  );
  return { ...answered, ...usualAnswers, isUsual: true, step: 'check' };
};

const canEnter = (draft: MorningDraft, step: string): boolean =>
  morningSteps(draft).includes(step) || (draft.isUsual === true && each(draft).includes(step));

export const morningReducer = (draft: MorningDraft, event: MorningEvent): MorningDraft => {
  if (draft.endedAt !== null) return draft;
  switch (event.type) {
    case 'go':
    case 'change':
      return canEnter(draft, event.step)
        ? { ...draft, step: event.step, isChanging: event.type === 'change' }
        : draft;
    case 'next':
      return forward(draft);
    case 'answer':
      return withAnswer(draft, event.joint, event.answer);
    case 'usual':
      return asUsual(draft, event.last);
    case 'not-usual':
      return forward({ ...draft, isUsual: false });
    case 'tick':
      return { ...draft, ticked: event.ticked };
    case 'flags':
      return event.flags.length === 0
        ? forward({ ...draft, flags: [] })
        : { ...draft, flags: event.flags, step: 'care', endedAt: event.now };
    case 'relief':
      return { ...draft, relief: event.relief };
    case 'urine':
      return { ...draft, urine: event.urine };
    case 'urine-done':
      return draft.urine === true
        ? { ...draft, flags: ['dark-urine'], step: 'care', endedAt: event.now }
        : forward(draft);
    case 'sent':
      return { ...draft, step: 'done', endedAt: event.now };
  }
};

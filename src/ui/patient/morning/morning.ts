/** The next-morning answers as the phone keeps them, and the pages they need. null means not answered yet. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Carer } from '#core/record/entry-words.ts';
import type { Swelling } from '#core/record/record.ts';
import type { Score, YesNo } from '../session/draft.ts';

export interface JointMorning {
  readonly pain: Score | null;
  readonly stiffnessMinutes: Score | null;
  readonly swelling: Swelling | 'unknown' | null;
  readonly flare: YesNo | null;
}

/** What this phone was told on the last morning, for "as last time". */
export type LastMorning = Readonly<
  Partial<Record<Joint, { readonly stiffnessMinutes: number; readonly swelling: 'none' | 'slight' }>>
>;

export interface MorningDraft {
  readonly shape: 1;
  readonly entryId: string;
  readonly ownerId: string;
  readonly day: string;
  readonly zone: string;
  readonly asksStiffness: boolean;
  readonly asksSwelling: boolean;
  readonly joints: readonly Joint[];
  readonly step: string;
  readonly isChanging: boolean;
  readonly byJoint: Readonly<Partial<Record<Joint, JointMorning>>>;
  /** null: the short way has not been answered; false: each question is asked. */
  readonly isUsual: boolean | null;
  readonly flags: readonly RedFlag[] | null;
  readonly ticked: readonly string[];
  readonly relief: YesNo | null;
  readonly endedAt: number | null;
  /** For an earlier day. This and what follows is absent in drafts of an earlier release. */
  readonly isLate?: boolean;
  /** Dark urine and unusual muscle pain have a question of their own this morning. */
  readonly asksUrine?: boolean;
  readonly urine?: YesNo | null;
  readonly enteredAs?: Carer | null;
  /** Entry it changes; null or absent where it is the first of its morning. */
  readonly amends?: string | null;
}

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

const nothing: JointMorning = { pain: null, stiffnessMinutes: null, swelling: null, flare: null };

export const jointMorning = (draft: MorningDraft, joint: Joint): JointMorning =>
  draft.byJoint[joint] ?? nothing;

export const beginMorning = (
  from: Pick<
    MorningDraft,
    | 'entryId'
    | 'ownerId'
    | 'day'
    | 'zone'
    | 'asksStiffness'
    | 'asksSwelling'
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
  ...draft.joints.flatMap((joint) => [
    ...(draft.asksStiffness ? [`stiffness:${joint}`] : []),
    ...(draft.asksSwelling ? [`swelling:${joint}`] : []),
    `flare:${joint}`,
  ]),
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

const withAnswer = (draft: MorningDraft, joint: Joint, answer: Partial<JointMorning>): MorningDraft => ({
  ...draft,
  byJoint: { ...draft.byJoint, [joint]: { ...jointMorning(draft, joint), ...answer } },
});

/** The statements on the page, taken as answered one by one: each was read and said to be right. */
const asUsual = (draft: MorningDraft, last: LastMorning): MorningDraft => {
  const answered = draft.joints.reduce(
    (one, joint) =>
      withAnswer(one, joint, {
        stiffnessMinutes: draft.asksStiffness ? (last[joint]?.stiffnessMinutes ?? 0) : null,
        swelling: draft.asksSwelling ? (last[joint]?.swelling ?? 'none') : null,
        flare: false,
      }),
    draft,
  );
  return { ...answered, isUsual: true, flags: [], relief: false, step: 'check' };
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

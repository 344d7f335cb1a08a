/** The next-morning answers as the phone keeps them. null means not answered yet. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { AsYesterday, LastOfJoint } from '#core/record/as-yesterday.ts';
import type { Carer } from '#core/record/entry-words.ts';
import {
  type AnswerName,
  type JointMorningAnswers,
  morningQuestions,
  type QuestionId,
  type SwellingQuestion,
} from '#core/record/morning-questions.ts';
import type { Score, YesNo } from '../session/draft.ts';

type Answers = Required<Pick<JointMorningAnswers, AnswerName>>;

/** What was said to each question about a joint. */
export type JointMorning = {
  readonly [N in AnswerName]: Exclude<Answers[N], 'not-applicable'> | 'unknown';
} & {
  /** Absent in drafts of an earlier release, which asked how swollen the joint is, usual or not. */
  readonly swellingQuestion?: SwellingQuestion;
};

/** What was pressed where another joint and extra pain relief are asked about at once. */
export type Either = 'neither' | 'other-joint' | 'relief' | 'both' | 'singly';

export interface MorningDraft {
  readonly shape: 1;
  readonly entryId: string;
  readonly ownerId: string;
  readonly day: string;
  readonly zone: string;
  readonly asksStiffness: boolean;
  readonly asksSwelling: boolean;
  /** Joints on which swelling is not asked for; absent in drafts of an earlier release. */
  readonly swellingNotAsked?: readonly Joint[];
  /** Absent in drafts of an earlier release, as are the answers to both. */
  readonly asksFatigue?: boolean;
  readonly asksOtherJoint?: boolean;
  readonly joints: readonly Joint[];
  readonly step: string;
  readonly isChanging: boolean;
  readonly byJoint: Readonly<Partial<Record<Joint, JointMorning>>>;
  /** Last values as they came with the day; absent or null = not offered, each question is asked. */
  readonly asYesterday?: AsYesterday;
  /** How warning signs are asked for; absent = by the whole list, as earlier releases did. */
  readonly signForm?: 'short' | 'list';
  /** Ticked, and asked about once more. */
  readonly toConfirm?: { readonly flags: readonly RedFlag[]; readonly from: string } | null;
  readonly slips?: readonly RedFlag[];
  /** Joints named where two are asked about at once; null or absent = not answered. */
  readonly swollen?: readonly Joint[] | null;
  readonly fatigue?: Score | null;
  readonly otherJointWorse?: YesNo | null;
  /** Another joint and extra pain relief: by one press, or each by itself, as in a draft of an earlier release. */
  readonly either?: 'together' | 'singly' | null;
  /** Another joint and pain relief were said to be as yesterday together with the quiet joints. */
  readonly isOnceUsual?: boolean;
  /** Of several joints asked about at once: alike in all (true), or asked one by one; absent = not answered. */
  readonly alike?: Readonly<Partial<Record<QuestionId, boolean>>>;
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

const nothing = Object.fromEntries(
  morningQuestions.map(({ answer }) => [answer.name, null]),
) as unknown as JointMorning;

/** An answer to the older question about swelling, in a draft left half done, counts as not answered. */
export const jointMorning = (draft: MorningDraft, joint: Joint): JointMorning => {
  const known = { ...nothing, ...draft.byJoint[joint] };
  return known.swellingQuestion === undefined ? { ...known, swelling: null } : known;
};

/** Of one or two joints all are as yesterday, or each is asked about; of more, those that are quiet may be. */
const bothOrNone = 2;

/** The last values of each joint, where this morning's pain lets them stand for today; null = each is asked. */
export const lastOffered = (draft: MorningDraft): readonly LastOfJoint[] | null => {
  const { asYesterday, joints } = draft;
  if (!asYesterday || asYesterday === 'singly' || draft.urine === 'unknown') return null;
  const rows = joints.map((joint) => {
    const last = asYesterday.joints.find((one) => one.joint === joint);
    const { pain } = jointMorning(draft, joint);
    return last && typeof pain === 'number' && pain < last.underPain ? last : null;
  });
  const known = rows.filter((row) => row !== null);
  const isWhole = known.length === rows.length || joints.length > bothOrNone;
  return isWhole && known.length > 0 ? known : null;
};

/** That no other joint is worse may stand as yesterday; false = it is not asked, or asked by itself. */
export const otherJointOffered = ({ asksOtherJoint, asYesterday }: MorningDraft): boolean =>
  asksOtherJoint === true && !!asYesterday && asYesterday !== 'singly' && asYesterday.noOtherJoint === true;

/** Tiredness as yesterday may stand for today; null = it is not asked, or asked by itself. */
export const fatigueOffered = ({ asksFatigue, asYesterday }: MorningDraft): number | null =>
  asksFatigue && asYesterday && asYesterday !== 'singly' ? (asYesterday.fatigue ?? null) : null;

export const asksSwellingOf = (
  draft: Pick<MorningDraft, 'asksSwelling' | 'swellingNotAsked'>,
  joint: Joint,
): boolean => draft.asksSwelling && !draft.swellingNotAsked?.includes(joint);

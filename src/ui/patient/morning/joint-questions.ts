/**
 * The questions about a joint as the phone asks them: of whom, what "as yesterday" answers after the pain, and
 * the statement that is read before it is said to be right. Steps, pages, answers and the short way come from
 * these rows, so that nothing is answered that was not stated. The question itself is the sentence `morning.<id>`.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { LastOfJoint } from '#core/record/as-yesterday.ts';
import {
  type JointQuestion,
  morningQuestions,
  type Question,
  type QuestionId,
} from '#core/record/morning-questions.ts';
import { t } from '../words.ts';
import {
  asksSwellingOf,
  fatigueOffered,
  type JointMorning,
  type MorningDraft,
  otherJointOffered,
} from './morning-draft.ts';

interface AskedRow {
  /** Left out = of every joint. */
  readonly isAsked?: (draft: MorningDraft, joint: Joint) => boolean;
  /** What 0 and 10 mean, of a score. */
  readonly ends?: () => readonly [low: string, high: string];
  /** Said under the question. */
  readonly hint?: () => string;
}

interface UsualRow<Q extends Question> extends AskedRow {
  /** null = yesterday says nothing of it, and the short way is not offered. */
  readonly usual: (last: LastOfJoint) => NonNullable<JointMorning[Q['answer']['name']]> | null;
  readonly statement: (last: LastOfJoint) => string;
}

/** A row for each question about a joint; a question without one does not compile. */
const rows: {
  readonly [Q in Question as Q['id']]: (Q['id'] extends 'pain' ? AskedRow : UsualRow<Q>) &
    (Q['answer'] extends { readonly unit: '{score}' } ? Required<Pick<AskedRow, 'ends'>> : unknown);
} = {
  pain: { ends: () => [t('scale.pain-low'), t('scale.pain-high')] },
  stiffness: {
    isAsked: (draft) => draft.asksStiffness,
    hint: () => t('morning.stiffness-hint'),
    usual: ({ stiffnessMinutes }) => stiffnessMinutes,
    statement: ({ stiffnessMinutes: minutes }) =>
      minutes === null || minutes === 0 ? t('morning.usual-stiff-0') : t('morning.usual-stiff', { minutes }),
  },
  swelling: {
    isAsked: asksSwellingOf,
    usual: () => 'none',
    statement: () => t('morning.usual-swelling'),
  },
  flare: {
    hint: () => t('morning.flare-hint'),
    usual: () => false,
    statement: () => t('morning.usual-flare'),
  },
};

/** What is asked of a joint, in order. */
export const questionsOf = (draft: MorningDraft, joint: Joint): readonly JointQuestion[] =>
  morningQuestions.filter(({ id }) => rows[id].isAsked?.(draft, joint) ?? true);

export const questionById = (id: string): JointQuestion | undefined =>
  morningQuestions.find((question) => question.id === id);

type ChoiceQuestion = Extract<Question, { readonly answer: { readonly kind: 'enum' } }>;
export type Choice = ChoiceQuestion['answer']['values'][number];
type ChoiceKey<Q extends Question = ChoiceQuestion> = Q extends ChoiceQuestion
  ? `morning.${Q['id']}-${Q['answer']['values'][number]}`
  : never;

/** A value of a choice, in the sentence `morning.<id>-<value>`. */
export const choiceText = (id: QuestionId, value: string): string => t(`morning.${id}-${value}` as ChoiceKey);

export const endsOf = (id: QuestionId): readonly [low: string, high: string] => rows[id].ends?.() ?? ['', ''];

export const hintOf = (id: QuestionId): string | undefined => rows[id].hint?.();

/** The pain is asked before the short way and is no part of it. */
const afterPain = (draft: MorningDraft, joint: Joint) =>
  questionsOf(draft, joint).flatMap(({ id, answer }) =>
    id === 'pain' ? [] : [{ id, name: answer.name, ...rows[id] }],
  );

/** What "as yesterday" answers of a joint; a question that is not asked stays unanswered. */
export const usualOfJoint = (draft: MorningDraft, last: LastOfJoint): Partial<JointMorning> =>
  Object.fromEntries(afterPain(draft, last.joint).map(({ name, usual }) => [name, usual(last)]));

/** Every question that would be asked of a joint has its answer of yesterday. */
export const isWhole = (draft: MorningDraft, last: LastOfJoint): boolean =>
  afterPain(draft, last.joint).every(({ usual }) => usual(last) !== null);

/** What "as yesterday" answers once for all joints. Warning signs are asked for apart. */
export const usualAnswers = { relief: false } as const satisfies Partial<MorningDraft>;

const ofJoint = (last: LastOfJoint, text: string, isOneOfMany: boolean): string =>
  isOneOfMany ? t('morning.usual-of', { joint: last.joint, text }) : text;

/** What is stated once for all joints; tiredness only where all of them are as yesterday. */
const onceStatements = (draft: MorningDraft, isOfSome: boolean): readonly string[] => {
  const fatigue = isOfSome ? null : fatigueOffered(draft);
  return [
    ...(fatigue === null ? [] : [t('morning.usual-fatigue', { fatigue })]),
    ...(otherJointOffered(draft) ? [t('usual.other-joint')] : []),
    t('morning.usual-relief'),
  ];
};

/** Of more than two joints what is said of one stands in one line. */
const jointStatements = (draft: MorningDraft, last: LastOfJoint): readonly string[] => {
  const said = afterPain(draft, last.joint).map(({ statement }) => statement(last));
  return draft.joints.length > 2
    ? [ofJoint(last, said.join(', '), true)]
    : said.map((text) => ofJoint(last, text, draft.joints.length > 1));
};

/** The statements, each once: those of a joint name it where there are several. */
export const usualStatements = (
  draft: MorningDraft,
  lasts: readonly LastOfJoint[],
  /** Some joints are asked about, and what is asked once for all is stated with the others. */
  isOnceOffered = false,
): readonly string[] => [
  ...new Set([
    ...lasts.flatMap((last) => jointStatements(draft, last)),
    ...(lasts.length === draft.joints.length || isOnceOffered ? onceStatements(draft, isOnceOffered) : []),
  ]),
];

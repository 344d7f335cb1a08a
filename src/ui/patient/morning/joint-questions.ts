/**
 * The questions about a joint as the phone asks them: of whom, what "as usual" answers after the pain, and the
 * statement that is read before it is said to be right. Steps, pages, answers and the short way come from these
 * rows, so that nothing is answered that was not stated. The question itself is the sentence `morning.<id>`.
 */
import type { Joint } from '#core/exercises/joints.ts';
import {
  type JointQuestion,
  morningQuestions,
  type Question,
  type QuestionId,
} from '#core/record/morning-questions.ts';
import { t } from '../words.ts';
import { asksSwellingOf, type JointMorning, type LastMorning, type MorningDraft } from './morning-draft.ts';

interface AskedRow {
  /** Left out = of every joint. */
  readonly isAsked?: (draft: MorningDraft, joint: Joint) => boolean;
  /** What 0 and 10 mean, of a score. */
  readonly ends?: () => readonly [low: string, high: string];
  /** Said under the question. */
  readonly hint?: () => string;
}

interface UsualRow<Q extends Question> extends AskedRow {
  readonly usual: (joint: Joint, last: LastMorning) => NonNullable<JointMorning[Q['answer']['name']]>;
  readonly statement: (joint: Joint, last: LastMorning) => string;
}

const lastMinutes = (joint: Joint, last: LastMorning): number => last[joint]?.stiffnessMinutes ?? 0;

/** A row for each question about a joint; a question without one does not compile. */
const rows: {
  readonly [Q in Question as Q['id']]: (Q['id'] extends 'pain' ? AskedRow : UsualRow<Q>) &
    (Q['answer'] extends { readonly unit: '{score}' } ? Required<Pick<AskedRow, 'ends'>> : unknown);
} = {
  pain: { ends: () => [t('scale.pain-low'), t('scale.pain-high')] },
  stiffness: {
    isAsked: (draft) => draft.asksStiffness,
    hint: () => t('morning.stiffness-hint'),
    usual: lastMinutes,
    statement: (joint, last) => {
      const minutes = lastMinutes(joint, last);
      return minutes === 0
        ? t('morning.usual-stiff-0', { joint })
        : t('morning.usual-stiff', { joint, minutes });
    },
  },
  swelling: {
    isAsked: asksSwellingOf,
    usual: () => 'none',
    statement: (joint) => t('morning.usual-swelling', { joint }),
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
    id === 'pain' ? [] : [{ name: answer.name, ...rows[id] }],
  );

/** What "as usual" answers of a joint; a question that is not asked stays unanswered. */
export const usualOfJoint = (draft: MorningDraft, joint: Joint, last: LastMorning): Partial<JointMorning> =>
  Object.fromEntries(afterPain(draft, joint).map(({ name, usual }) => [name, usual(joint, last)]));

/** What "as usual" answers once for all joints. The page states the warning signs as their list. */
export const usualAnswers = { flags: [], relief: false } as const satisfies Partial<MorningDraft>;

const statementOf: Readonly<Record<keyof typeof usualAnswers, () => readonly string[]>> = {
  relief: () => [t('morning.usual-relief')],
  flags: () => [],
};

/** The statements, each once; warning signs are stated apart, as the list of them all. */
export const usualStatements = (draft: MorningDraft, last: LastMorning): readonly string[] => [
  ...new Set([
    ...draft.joints.flatMap((joint) =>
      afterPain(draft, joint).map(({ statement }) => statement(joint, last)),
    ),
    ...Object.values(statementOf).flatMap((statement) => statement()),
  ]),
];

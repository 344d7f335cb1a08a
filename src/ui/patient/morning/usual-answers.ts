/**
 * The short way of the morning: for each question after the pain, what "as usual" answers and the statement
 * that is read before it is said to be right. The page and the answers both come from these rows, so nothing
 * is answered that was not stated.
 */
import type { Joint } from '#core/exercises/joints.ts';
import { t } from '../words.ts';
import { asksSwellingOf, type JointMorning, type LastMorning, type MorningDraft } from './morning-draft.ts';

type Answer = Omit<JointMorning, 'pain' | 'swellingQuestion'>;

interface UsualRow<Q extends keyof Answer> {
  readonly isAsked: (draft: MorningDraft, joint: Joint) => boolean;
  readonly answer: (joint: Joint, last: LastMorning) => NonNullable<Answer[Q]>;
  readonly statement: (joint: Joint, last: LastMorning) => string;
}

const lastMinutes = (joint: Joint, last: LastMorning): number => last[joint]?.stiffnessMinutes ?? 0;

/** A row for each question about a joint; a question without one does not compile. */
const jointRows: { readonly [Q in keyof Answer]-?: UsualRow<Q> } = {
  stiffnessMinutes: {
    isAsked: (draft) => draft.asksStiffness,
    answer: lastMinutes,
    statement: (joint, last) => {
      const minutes = lastMinutes(joint, last);
      return minutes === 0
        ? t('morning.usual-stiff-0', { joint })
        : t('morning.usual-stiff', { joint, minutes });
    },
  },
  swelling: {
    isAsked: asksSwellingOf,
    answer: () => 'none',
    statement: (joint) => t('morning.usual-swelling', { joint }),
  },
  flare: {
    isAsked: () => true,
    answer: () => false,
    statement: () => t('morning.usual-flare'),
  },
};

const rowsOf = (draft: MorningDraft, joint: Joint) =>
  Object.entries(jointRows).filter(([, row]) => row.isAsked(draft, joint));

/** What "as usual" answers of a joint; a question that is not asked stays unanswered. */
export const usualOfJoint = (draft: MorningDraft, joint: Joint, last: LastMorning): Partial<JointMorning> =>
  Object.fromEntries(rowsOf(draft, joint).map(([question, row]) => [question, row.answer(joint, last)]));

/** What "as usual" answers once for all joints. The page states the warning signs as their list. */
export const usualAnswers = { flags: [], relief: false } as const satisfies Partial<MorningDraft>;

const statementOf: Readonly<Record<keyof typeof usualAnswers, () => readonly string[]>> = {
  relief: () => [t('morning.usual-relief')],
  flags: () => [],
};

/** The statements, each once; warning signs are stated apart, as the list of them all. */
export const usualStatements = (draft: MorningDraft, last: LastMorning): readonly string[] => [
  ...new Set([
    ...draft.joints.flatMap((joint) => rowsOf(draft, joint).map(([, row]) => row.statement(joint, last))),
    ...Object.values(statementOf).flatMap((statement) => statement()),
  ]),
];

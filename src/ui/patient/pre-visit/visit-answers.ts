/** Answers before a visit as they are given, one question after the other. What is left out is not sent. */
import type { QuestionsAnswer } from './answers.ts';

export type Question = QuestionsAnswer['questions'][number];

export interface Given {
  readonly answer: 'yes' | 'no' | 'not-known' | null;
  readonly details: readonly string[];
  readonly limbs: readonly string[];
  readonly joints: readonly string[];
}

export type GivenById = Readonly<Record<string, Given>>;

export const notGiven: Given = { answer: null, details: [], limbs: [], joints: [] };

/** More is asked only where the answer may be so. */
export const asksMore = ({ asks }: Question, { answer }: Given): boolean =>
  (answer === 'yes' || answer === 'not-known') &&
  (asks.details.length > 0 || Boolean(asks.limbs || asks.joints));

/** "left-arm". */
const limbFrom = (id: string) => {
  const [side, limb] = id.split('-');
  return { side, limb };
};

export const answersToSend = (questions: readonly Question[], given: GivenById) =>
  questions.flatMap((question) => {
    const one = given[question.id] ?? notGiven;
    if (one.answer === null) return [];
    const isMore = asksMore(question, one);
    return [
      {
        item: question.id,
        answer: one.answer,
        ...(isMore && one.details.length > 0 ? { details: one.details } : {}),
        ...(isMore && one.limbs.length > 0 ? { limbs: one.limbs.map(limbFrom) } : {}),
        ...(isMore && one.joints.length > 0 ? { joints: one.joints } : {}),
      },
    ];
  });

/** Answers before a visit as they are given, one question after the other. What is left out is not sent. */
import type { Limb, Side } from '#core/exercises/joints.ts';
import { leftUnsaid } from '#core/screening/answer-remarks.ts';
import type { ScreeningAnswer } from '#core/screening/screening.ts';
import type { QuestionsAnswer } from './answers.ts';

export type Question = QuestionsAnswer['questions'][number];

export interface Given {
  readonly answer: ScreeningAnswer | null;
  readonly details: readonly string[];
  readonly limbs: readonly string[];
  readonly joints: readonly string[];
  /** YYYY-MM-DD, or empty. */
  readonly day: string;
  readonly note: string;
}

export type GivenById = Readonly<Record<string, Given>>;

export const notGiven: Given = { answer: null, details: [], limbs: [], joints: [], day: '', note: '' };

/** More is asked only where the answer may be so. */
export const asksMore = ({ asks }: Question, { answer }: Given): boolean =>
  (answer === 'yes' || answer === 'not-known') &&
  (asks.details.length > 0 || asks.limbs || asks.joints || asks.day);

/** "left-arm". */
const limbFrom = (id: string) => {
  const [side, limb] = id.split('-');
  return { limb: limb as Limb, side: side as Side };
};

/** A "yes" that does not say which: it is asked at the visit. */
export const isUnsaid = ({ asks }: Question, { answer, details, limbs, joints }: Given): boolean =>
  answer !== null && leftUnsaid(asks, { answer, details, limbs: limbs.map(limbFrom), joints }).length > 0;

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
        ...(isMore && question.asks.day && one.day !== '' ? { day: one.day } : {}),
        ...(one.note.trim() === '' ? {} : { note: one.note.trim() }),
      },
    ];
  });

/** What stands beside an answer wherever staff read it: what was left unsaid, the day and the note. */
import { dayInWords } from '../review/plain-words.ts';
import type { ScreeningItemAnswer } from './screening.ts';

/** What an item asks further, for a "yes". */
export interface AsksFurther {
  readonly limbs?: boolean;
  readonly joints?: boolean;
  readonly details?: readonly unknown[];
}

type LeftUnsaid = 'which' | 'limb' | 'joint';

/** What a "yes" should have named and did not. Of an answer that is not known nothing more can be said. */
export const leftUnsaid = (
  asks: AsksFurther,
  given: Pick<ScreeningItemAnswer, 'answer' | 'details' | 'limbs' | 'joints'>,
): readonly LeftUnsaid[] => {
  if (given.answer !== 'yes') return [];
  const asked: readonly (readonly [LeftUnsaid, boolean, readonly unknown[] | undefined])[] = [
    ['which', Boolean(asks.details?.length), given.details],
    ['limb', Boolean(asks.limbs), given.limbs],
    ['joint', Boolean(asks.joints), given.joints],
  ];
  return asked.filter(([, isAsked, named]) => isAsked && !named?.length).map(([name]) => name);
};

/** "which: not said", "last on 3 Feb 2026", "noted: “INR 2.5”". */
export const answerRemarks = (asks: AsksFurther, answer: ScreeningItemAnswer): readonly string[] => [
  ...leftUnsaid(asks, answer).map((name) => `${name}: not said`),
  ...(answer.day === undefined ? [] : [`last on ${dayInWords(answer.day)}`]),
  ...(answer.note === undefined ? [] : [`noted: “${answer.note}”`]),
];

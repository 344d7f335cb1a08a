/**
 * Some answers put beside those on record: what the next version of the screening holds. An answer taken
 * over from before is never made younger, so that no screening is renewed by one answer.
 */
import type { Day } from '../time/day.ts';
import { isSameAnswer, minimumSet } from './pre-visit.ts';
import type { Screening, ScreeningItemAnswer } from './screening.ts';

interface Answered {
  readonly sheetVersion: string;
  readonly answers: readonly ScreeningItemAnswer[];
}

interface NextScreening extends Answered {
  /** Day on which the sheet was asked; that of the version before where only some answers are new. */
  readonly day: Day;
  /** Items whose answer is new or another one than before. */
  readonly changed: readonly string[];
}

/** Whether all that any exercise needs was asked now. */
const isSheetAsked = (answers: readonly ScreeningItemAnswer[], ageYears: number): boolean => {
  const items = new Set(answers.map((answer) => answer.item));
  return minimumSet('low-load', ageYears).every((item) => items.has(item.id));
};

export const nextScreening = (
  before: Screening | null,
  now: Answered,
  today: Day,
  ageYears: number,
  /** Each was put to the patient again, so that the same answer is one of today as well. */
  isAskedAnew = false,
): NextScreening => {
  const { sheetVersion, answers } = now;
  const known = before?.sheetVersion === sheetVersion ? before : null;
  const earlier = (item: string) => known?.answers.find((one) => one.item === item) ?? null;
  const changed = answers
    .filter((answer) => {
      const same = earlier(answer.item);
      return !same || !isSameAnswer(same, answer);
    })
    .map((answer) => answer.item);
  if (!known) return { sheetVersion, day: today, answers, changed };
  const rest = known.answers.filter((one) => !answers.some((answer) => answer.item === one.item));
  if (known.day < today && isSheetAsked(answers, ageYears)) {
    // Asked anew: a plain no from before is asked again where it is needed; anything else goes on to count.
    const counting = rest
      .filter((one) => one.answer !== 'no')
      .map((one) => ({ ...one, askedOn: one.askedOn ?? known.day }));
    return { sheetVersion, day: today, answers: [...answers, ...counting], changed };
  }
  const taken = answers.map((answer) => {
    const same = earlier(answer.item);
    if (same && !changed.includes(answer.item) && !isAskedAnew) return same;
    return known.day === today ? answer : { ...answer, askedOn: today };
  });
  return { sheetVersion, day: known.day, answers: [...rest, ...taken], changed };
};

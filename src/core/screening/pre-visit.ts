/**
 * What the patient answered on the phone before a visit, beside what is on record. A clinician looks at
 * what is yes, not known or changed, and confirms; nothing the patient sent is a screening by itself.
 * An item nobody answered stays unanswered: it is never taken over as a no.
 */

import { type Method, methods } from '../prescribing/methods.ts';
import { type Day, daysBetween } from '../time/day.ts';
import { itemsAskedAt, type ScreeningItemId, type SheetItem, screeningItems } from './items.ts';
import type { Screening, ScreeningItemAnswer } from './screening.ts';

export interface PreVisit {
  readonly day: Day;
  readonly answers: readonly ScreeningItemAnswer[];
}

type Change = 'new' | 'changed' | 'same' | 'not-answered';

export interface LookAt {
  readonly item: SheetItem;
  /** What the patient said now; null when the item was left out. */
  readonly now: ScreeningItemAnswer | null;
  /** What is on record; null when it was never asked. */
  readonly before: ScreeningItemAnswer | null;
  readonly change: Change;
  /** First day of the unbroken run of the answer on record; for "still true since …?". */
  readonly since: Day | null;
}

const answerTo = (sheet: Pick<Screening, 'answers'> | null, item: string): ScreeningItemAnswer | null =>
  sheet?.answers.find((answer) => answer.item === item) ?? null;

const sorted = (list: readonly unknown[] | undefined): string =>
  JSON.stringify((list ?? []).map((one) => JSON.stringify(one)).sort());

/** Same answer, limbs, joints and details, in whatever order, with the same day and note. */
export const isSameAnswer = (a: ScreeningItemAnswer, b: ScreeningItemAnswer): boolean =>
  a.answer === b.answer &&
  sorted(a.limbs) === sorted(b.limbs) &&
  sorted(a.joints) === sorted(b.joints) &&
  sorted(a.details) === sorted(b.details) &&
  a.day === b.day &&
  a.note === b.note;

/** Since when the newest answer has stood unchanged over the screenings, newest first. */
export const answeredSince = (screenings: readonly Screening[], item: string): Day | null => {
  const newest = answerTo(screenings[0] ?? null, item);
  if (!newest) return null;
  let since: Day | null = null;
  for (const screening of screenings) {
    const answer = answerTo(screening, item);
    if (!answer || !isSameAnswer(answer, newest)) break;
    since = screening.day;
  }
  return since;
};

const changeOf = (now: ScreeningItemAnswer | null, before: ScreeningItemAnswer | null): Change => {
  if (!now) return 'not-answered';
  if (!before) return 'new';
  return isSameAnswer(now, before) ? 'same' : 'changed';
};

/** Every item, with what is new about it. Screenings come newest first. */
export const besideRecord = (screenings: readonly Screening[], preVisit: PreVisit): readonly LookAt[] =>
  screeningItems.map((item) => {
    const now = answerTo(preVisit, item.id);
    const before = answerTo(screenings[0] ?? null, item.id);
    return { item, now, before, change: changeOf(now, before), since: answeredSince(screenings, item.id) };
  });

/** Only what a clinician has to look at: all but a plain no without a note, changed, or left out though it was never a plain no. */
export const toLookAt = (rows: readonly LookAt[]): readonly LookAt[] =>
  rows.filter(({ now, before, change }) => {
    if (now === null) return before !== null && before.answer !== 'no';
    return now.answer !== 'no' || now.note !== undefined || change === 'changed';
  });

/** Whether people of this age are asked the item, and it was not marked as not applicable to this one. */
export const stillApplies = (
  item: ScreeningItemId,
  screening: Pick<Screening, 'answers'> | null,
  ageYears: number,
): boolean =>
  itemsAskedAt(ageYears).some(({ id }) => id === item) &&
  answerTo(screening, item)?.answer !== 'not-applicable';

/** The screening to record: the patient's answers with the clinician's words in place where given. */
export const confirmed = (
  preVisit: PreVisit,
  corrections: readonly ScreeningItemAnswer[],
): readonly ScreeningItemAnswer[] => {
  const corrected = new Map(corrections.map((answer) => [answer.item, answer]));
  const given = preVisit.answers.filter((answer) => !corrected.has(answer.item));
  return [...given, ...corrected.values()];
};

/** Items a method stays closed for until answered, at this age. */
export const minimumSet = (method: Method, ageYears: number): readonly SheetItem[] =>
  itemsAskedAt(ageYears).filter((item) => item.minimumFor.includes(method));

/** What is still to be asked for each method; empty where the minimum is answered. */
export const stillToAsk = (
  answers: readonly Pick<ScreeningItemAnswer, 'item'>[],
  ageYears: number,
): Readonly<Record<Method, readonly SheetItem[]>> => {
  const answered = new Set(answers.map((answer) => answer.item));
  return Object.fromEntries(
    methods.map((method) => [method, minimumSet(method, ageYears).filter((item) => !answered.has(item.id))]),
  ) as unknown as Record<Method, readonly SheetItem[]>;
};

interface Asked {
  /** Newest screening; null when there is none. */
  readonly screening: { readonly day: Day; readonly recordedAt: number } | null;
  /** Newest answers the patient sent; null when there are none. */
  readonly sent: { readonly recordedAt: number } | null;
  /** First day of the last return from a break or after an end of care. */
  readonly returnedOn: Day | null;
  readonly validDays: number;
  readonly today: Day;
}

/**
 * Whether the patient is shown that questions wait: nothing was ever screened, the screening is too old,
 * or it is older than the return. Answers that wait for a clinician are not asked for again.
 */
export const questionsWait = ({ screening, sent, returnedOn, validDays, today }: Asked): boolean => {
  if (sent && (!screening || sent.recordedAt > screening.recordedAt)) return false;
  if (!screening) return true;
  if (returnedOn !== null && returnedOn > screening.day) return true;
  return daysBetween(screening.day, today) > validDays;
};

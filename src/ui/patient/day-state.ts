/** What today's page says of the day, from the clinic's view and from what this phone keeps. Pure. */
import type { QuestionsDue } from '#api/patient/today-view.ts';
import type { Today } from '#core/decision/answers.ts';
import { morningsAsked } from '#core/prescribing/programme/urine-question.ts';
import { askedInSession } from '#core/record/followed-joints.ts';
import { addDays } from '#core/time/day.ts';
import type { Outbox, Saved } from './outbox/outbox.ts';
import { leftUntilCounted } from './until-counted.ts';
import { type DayView, momentOf } from './view-on-day.ts';

const twoHoursMs = 2 * 60 * 60 * 1000;
/** A session of the evening is still asked about past midnight; the night after it is not. */
const askedForMs = 6 * 60 * 60 * 1000;

export interface DayState {
  readonly session: 'open' | 'kept-here' | 'sent';
  /** A warning sign was told from this phone and the clinic's page does not speak of it yet: nothing is begun. */
  readonly hasReportedFlag: boolean;
  /** What this morning's answers leave at the least, while the clinic's page does not count them yet; null = they take nothing. */
  readonly leftUntilCounted: Today | null;
  readonly isMorningDue: boolean;
  /** Answered at an hour that counts. */
  readonly isMorningAnswered: boolean;
  /** Not answered so, and not the hour for it: whether something was kept all the same. */
  readonly morningOutside: { readonly now: 'early' | 'over'; readonly isKept: boolean } | null;
  /** Entry of this morning's answers that the clinic has: new ones are sent in its place. */
  readonly morningToChange: string | null;
  /** The day before, while its check may still be given. */
  readonly lateMorning: string | null;
  /** Dark urine and unusual muscle pain are asked apart this morning. */
  readonly asksUrine: boolean;
  /** Entry id of the session the two-hours question speaks of, once it is due. */
  readonly twoHoursOf: string | null;
  /** Joints that question was answered for already: it goes on at the next. */
  readonly twoHoursAnswered: number;
  /** What the clinic asks now and then and is due: one set at a time; null = nothing, or nothing is asked now. */
  readonly questionsDue: QuestionsDue | null;
}

type Asked = Pick<
  DayView,
  | 'day'
  | 'sessionSent'
  | 'morning'
  | 'asksTwoHours'
  | 'urineAskedUntil'
  | 'exercises'
  | 'followedJoints'
  | 'knownEntryIds'
  | 'clinic'
> &
  Partial<Pick<DayView, 'clinicDay' | 'morningNow' | 'questionsDue' | 'isStopped' | 'isTooOld'>>;

const isOf = (saved: Saved, kind: Saved['kind'], day: string): boolean =>
  saved.kind === kind && saved.day === day;

/** By the clinic's word, or because a new dose was begun from this phone and the clinic has not answered yet. */
const asksUrine = (view: Asked, entries: readonly Saved[]): boolean => {
  if (view.urineAskedUntil !== null && view.day <= view.urineAskedUntil) return true;
  if (!view.exercises.some((exercise) => exercise.isNewDose)) return false;
  const from = addDays(view.day, -morningsAsked);
  return entries.some((saved) => saved.kind === 'session' && saved.day >= from && saved.day < view.day);
};

/** The newest session that the question is due for, and how many of its joints are answered. */
const twoHours = (view: Asked, entries: readonly Saved[], now: number) => {
  // A corrected session is the same session.
  const isDue = ({ kind, day, savedAt, amends }: Saved): boolean =>
    kind === 'session' &&
    amends === undefined &&
    now - savedAt >= twoHoursMs &&
    (day === view.day || now - savedAt < askedForMs);
  const of = entries.filter(isDue).sort((a, b) => b.savedAt - a.savedAt)[0];
  if (!view.asksTwoHours || of === undefined) return { of: null, answered: 0 };
  const answers = entries.filter((saved) => saved.kind === 'two-hours' && saved.savedAt >= of.savedAt);
  const isLeft = answers.length < askedInSession(view.followedJoints, view.exercises).length;
  return { of: isLeft ? of.entryId : null, answered: answers.length };
};

/** Of this phone the newest, once the clinic has it; else what the clinic has from another phone. */
const morningToChange = (view: Asked, entries: readonly Saved[]): string | null => {
  // A change is taken on the clinic's own day alone.
  if ((view.clinicDay ?? view.day) !== view.day) return null;
  const [newest] = entries
    .filter((saved) => isOf(saved, 'morning', view.day) && saved.status !== 'aside')
    .sort((a, b) => b.savedAt - a.savedAt);
  if (newest) return newest.status === 'stored' ? newest.entryId : null;
  return view.morning.entryId ?? null;
};

/** Answers given at an hour that speaks of the morning: as the clinic says, or kept on this phone. */
const countsAsMorning = (view: Asked, entries: readonly Saved[]): boolean =>
  (view.morning.answered && !view.morning.due) ||
  entries.some(
    (saved) => isOf(saved, 'morning', view.day) && momentOf(view, saved.savedAt).morning === 'open',
  );

/** A sign told here that the clinic's page does not speak of yet; what it knows it says for itself. */
const stopsByItself = (view: Asked, { isUrgent, entryId, status, day }: Saved): boolean =>
  isUrgent && !(view.knownEntryIds ?? []).includes(entryId) && (status === 'waiting' || day === view.day);

/** By the clinic's word, but for what was answered on this phone and the clinic's page does not count yet. */
const questionsDue = (view: Asked, entries: readonly Saved[]): QuestionsDue | null => {
  if (view.isStopped || view.isTooOld || hasToldSign(view, entries)) return null;
  const isAnswered = ({ homeQuestionsId, knownEntryIds }: QuestionsDue): boolean =>
    entries.some(
      (saved) =>
        saved.homeQuestionsId === homeQuestionsId &&
        saved.status !== 'aside' &&
        !knownEntryIds.includes(saved.entryId),
    );
  return view.questionsDue?.find((due) => !isAnswered(due)) ?? null;
};

/** A sign was told from this phone and the clinic's page does not speak of it yet. */
export const hasToldSign = (view: Asked, entries: readonly Saved[]): boolean =>
  entries.some((saved) => stopsByItself(view, saved));

export const dayState = (view: Asked, entries: readonly Saved[], now: number): DayState => {
  const sessions = entries.filter((saved) => isOf(saved, 'session', view.day));
  const isSent = view.sessionSent || sessions.some((saved) => saved.status === 'stored');
  const wasAnswered = (day: string) => entries.some((saved) => isOf(saved, 'morning', day));
  const isMorningAnswered = countsAsMorning(view, entries);
  const isKept = view.morning.answered || wasAnswered(view.day);
  const { morningNow = 'open' } = view;
  const isOpen = view.morning.due && !isMorningAnswered;
  const later = twoHours(view, entries, now);
  const yesterday = addDays(view.day, -1);
  return {
    session: isSent ? 'sent' : sessions.length > 0 ? 'kept-here' : 'open',
    hasReportedFlag: hasToldSign(view, entries),
    leftUntilCounted: leftUntilCounted(view, entries),
    isMorningDue: isOpen && morningNow === 'open',
    isMorningAnswered,
    morningOutside: isOpen && morningNow !== 'open' ? { now: morningNow, isKept } : null,
    morningToChange: morningToChange(view, entries),
    lateMorning: view.morning.yesterdayOpen && !wasAnswered(yesterday) ? yesterday : null,
    asksUrine: asksUrine(view, entries),
    twoHoursOf: later.of,
    twoHoursAnswered: later.answered,
    questionsDue: questionsDue(view, entries),
  };
};

/** Where an entry is: at the clinic, or on this phone, where nothing goes on before somebody signs in again. */
export type Arrival = 'stored' | 'kept' | 'signed-out';

export const arrivalOf = ({ entries, isSignedOut }: Outbox, entryId: string): Arrival =>
  entries.some((saved) => saved.entryId === entryId && saved.status === 'stored')
    ? 'stored'
    : isSignedOut
      ? 'signed-out'
      : 'kept';

/** What today's page says of the day, from the clinic's view and from what this phone keeps. Pure. */
import type { TodayView } from '#api/patient/today-view.ts';
import { addDays } from '#core/day.ts';
import { morningsAsked } from '#core/programme/urine-question.ts';
import type { Kept } from './outbox/outbox.ts';

export const twoHoursMs = 2 * 60 * 60 * 1000;

export interface DayState {
  readonly session: 'open' | 'kept-here' | 'sent';
  /** A warning sign was told from this phone today: nothing is begun after it. */
  readonly hasToldFlag: boolean;
  readonly isMorningDue: boolean;
  readonly isMorningAnswered: boolean;
  /** The day before, while its check may still be given. */
  readonly lateMorning: string | null;
  /** Dark urine and unusual muscle pain are asked apart this morning. */
  readonly asksUrine: boolean;
  /** Entry id of the session the two-hours question speaks of, once it is due. */
  readonly twoHoursOf: string | null;
}

type Asked = Pick<
  TodayView,
  'day' | 'sessionSent' | 'morning' | 'asksTwoHours' | 'urineAskedUntil' | 'exercises'
>;

const isOf = (kept: Kept, kind: Kept['kind'], day: string): boolean => kept.kind === kind && kept.day === day;

/** By the clinic's word, or because a new dose was begun from this phone and the clinic has not answered yet. */
const asksUrine = (view: Asked, entries: readonly Kept[]): boolean => {
  if (view.urineAskedUntil !== null && view.day <= view.urineAskedUntil) return true;
  if (!view.exercises.some((exercise) => exercise.isNewDose)) return false;
  const from = addDays(view.day, -morningsAsked);
  return entries.some((kept) => kept.kind === 'session' && kept.day >= from && kept.day < view.day);
};

export const dayState = (view: Asked, entries: readonly Kept[], now: number): DayState => {
  const sessions = entries.filter((kept) => isOf(kept, 'session', view.day));
  const isSent = view.sessionSent || sessions.some((kept) => kept.status === 'stored');
  const wasAnswered = (day: string) => entries.some((kept) => isOf(kept, 'morning', day));
  const isMorningAnswered = view.morning.answered || wasAnswered(view.day);
  const asksTwoHours = view.asksTwoHours && !entries.some((kept) => isOf(kept, 'two-hours', view.day));
  const spokenOf = sessions.find((kept) => now - kept.savedAt >= twoHoursMs);
  const yesterday = addDays(view.day, -1);
  return {
    session: isSent ? 'sent' : sessions.length > 0 ? 'kept-here' : 'open',
    hasToldFlag: entries.some((kept) => kept.day === view.day && kept.isUrgent),
    isMorningDue: view.morning.due && !isMorningAnswered,
    isMorningAnswered,
    lateMorning: view.morning.yesterdayOpen && !wasAnswered(yesterday) ? yesterday : null,
    asksUrine: asksUrine(view, entries),
    twoHoursOf: asksTwoHours ? (spokenOf?.entryId ?? null) : null,
  };
};

export const hasArrived = (entries: readonly Kept[], entryId: string): boolean =>
  entries.some((kept) => kept.entryId === entryId && kept.status === 'stored');

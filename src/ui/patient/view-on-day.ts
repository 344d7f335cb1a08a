/**
 * The day a page shows when the phone has moved on without signal: the last view the clinic gave, read
 * for the phone's own day. What the clinic had stopped stays stopped; what it changed since is not known,
 * and past the clinic's limit nothing is begun by an old page. Pure.
 */
import type { TodayView } from '#api/patient/today-view.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays, daysBetween } from '#core/time/day.ts';

/** The civil day on the phone's clock. */
export const phoneDay = (now: number): string => {
  const at = new Date(now);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

export interface DayView extends TodayView {
  /** Day the clinic gave this page, where that is not today. */
  readonly givenOn: string | null;
  /** Older than the clinic lets a phone go on by. */
  readonly isTooOld: boolean;
}

export const viewOnDay = (view: TodayView, day: string): DayView => {
  // A phone in a zone behind the clinic's keeps the clinic's day.
  if (day <= view.day) return { ...view, givenOn: null, isTooOld: false };
  const weekday = weekdayOf(day);
  const isNextDay = addDays(view.day, 1) === day;
  return {
    ...view,
    day,
    givenOn: view.day,
    isTooOld: daysBetween(view.day, day) > view.oldPageDays,
    exercises: view.exercises.map((one) => ({
      ...one,
      planned: one.weekdays === null || one.weekdays.includes(weekday),
    })),
    morning: {
      due: view.followedJoints.length > 0 && !view.asksNothing,
      answered: false,
      yesterdayOpen: view.morning.canBeLate && (isNextDay ? !view.morning.answered : true),
      canBeLate: view.morning.canBeLate,
    },
    sessionSent: false,
  };
};

/** What of today can be done, and how its warning signs are asked: known before anything is begun. */

import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { isRest } from '#core/decision/left-of-today.ts';

/** Exercises that are on today's list: planned, and not at rest. */
export const doableToday = (view: TodayView): readonly TodayExercise[] =>
  view.exercises.filter((one) => one.planned && !isRest(one.today));

/** The short question about warning signs may stand in place of the list on this day. */
export const asksShort = ({ day, shortSignsUntil }: Pick<TodayView, 'day' | 'shortSignsUntil'>): boolean =>
  shortSignsUntil != null && day <= shortSignsUntil;

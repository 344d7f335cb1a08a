/** What of today can be done: known before anything is begun. */

import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import { isDoable } from '#core/decision/left-of-today.ts';

/** Exercises that are on today's list: planned, and not at rest. */
export const doableToday = (view: TodayView): readonly TodayExercise[] => view.exercises.filter(isDoable);

/** The weekdays on which a prescribed exercise stands: those of the programme, or spaced where none has been written. */
import type { Day } from '#core/time/day.ts';
import type { Dose } from '../dose.ts';
import { plannedExercise } from './planned-exercise.ts';
import { type Programme, type Weekday, weekdayOf, weekdaysOf } from './planned-sessions.ts';
import { unplannedDays } from './unplanned-days.ts';

interface SignedExercise {
  readonly itemId: string;
  readonly dose: Dose;
  readonly signedOn: Day;
}

/** null: every day. */
export type WeekdaysOn = (itemId: string, day: Day) => readonly Weekday[] | null;

export const exerciseWeekdays = (
  exercises: readonly SignedExercise[],
  programmes: readonly Programme[],
  today: Day,
): WeekdaysOn => {
  const [first = today] = exercises.map(({ signedOn }) => signedOn).sort();
  const spaced = unplannedDays(exercises.map(plannedExercise), weekdayOf(first));
  return (itemId, day) => weekdaysOf(programmes, day, itemId) ?? spaced.get(itemId) ?? null;
};

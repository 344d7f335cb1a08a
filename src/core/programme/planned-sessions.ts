/** Planned sessions from the programme: which prescribed exercise stands on which weekday. */
import { addDays, type Day, dayNumber } from '../day.ts';
import type { PlannedSession } from '../model/record.ts';

/** 1 = Monday … 7 = Sunday, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

export interface ProgrammeLine {
  readonly lineId: string;
  readonly weekdays: readonly Weekday[];
}

export interface Programme {
  readonly version: number;
  /** First day it holds; it holds until a newer version begins. */
  readonly fromDay: Day;
  readonly lines: readonly ProgrammeLine[];
}

/** 1970-01-01 was a Thursday. */
export const weekdayOf = (day: Day): Weekday => (((((dayNumber(day) + 3) % 7) + 7) % 7) + 1) as Weekday;

/** The programme that holds on a day: the newest one begun, a later version of the same day winning. */
export const programmeOn = (programmes: readonly Programme[], day: Day): Programme | null =>
  programmes.reduce<Programme | null>(
    (best, next) => (next.fromDay <= day && (!best || next.version > best.version) ? next : best),
    null,
  );

/** Lines that stand on a day; null when no programme has begun. */
export const linesOn = (programmes: readonly Programme[], day: Day): readonly string[] | null => {
  const programme = programmeOn(programmes, day);
  if (!programme) return null;
  return programme.lines.filter((line) => line.weekdays.includes(weekdayOf(day))).map((line) => line.lineId);
};

/** Weekdays of a line under the programme that holds; null when none has begun, which means every day. */
export const weekdaysOf = (
  programmes: readonly Programme[],
  day: Day,
  lineId: string,
): readonly Weekday[] | null => {
  const programme = programmeOn(programmes, day);
  if (!programme) return null;
  return programme.lines.find((line) => line.lineId === lineId)?.weekdays ?? [];
};

/** Days with at least one exercise, from `from` to `to`, both included. */
export const plannedSessions = (
  programmes: readonly Programme[],
  from: Day,
  to: Day,
): readonly PlannedSession[] => {
  const planned: PlannedSession[] = [];
  for (let day = from; day <= to; day = addDays(day, 1)) {
    if ((linesOn(programmes, day) ?? []).length > 0) planned.push({ day });
  }
  return planned;
};

/** Planned sessions from the programme: which prescribed exercise stands on which weekday. */

import { type Day, dayFromNumber, dayNumber } from '#core/time/day.ts';
import type { PlannedSession } from './planned-session.ts';

/** 1 = Monday … 7 = Sunday, as in ISO 8601. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

export interface ProgrammeItem {
  readonly itemId: string;
  readonly weekdays: readonly Weekday[];
}

export interface Programme {
  readonly version: number;
  /** First day it holds; it holds until a newer version begins. */
  readonly fromDay: Day;
  readonly lines: readonly ProgrammeItem[];
}

/** 1970-01-01, day number 0, was a Thursday. */
const weekdayOfNumber = (number: number): Weekday => (((((number + 3) % 7) + 7) % 7) + 1) as Weekday;

export const weekdayOf = (day: Day): Weekday => weekdayOfNumber(dayNumber(day));

/** The programme that holds on a day: the newest one begun, a later version of the same day winning. */
const programmeOn = (programmes: readonly Programme[], day: Day): Programme | null =>
  programmes.reduce<Programme | null>(
    (best, next) => (next.fromDay <= day && (!best || next.version > best.version) ? next : best),
    null,
  );

/** Lines that stand on a day; null when no programme has begun. */
export const linesOn = (programmes: readonly Programme[], day: Day): readonly string[] | null => {
  const programme = programmeOn(programmes, day);
  if (!programme) return null;
  return programme.lines.filter((item) => item.weekdays.includes(weekdayOf(day))).map((item) => item.itemId);
};

/** Weekdays of a line under the programme that holds; null when none has begun, which means every day. */
export const weekdaysOf = (
  programmes: readonly Programme[],
  day: Day,
  itemId: string,
): readonly Weekday[] | null => {
  const programme = programmeOn(programmes, day);
  if (!programme) return null;
  return programme.lines.find((item) => item.itemId === itemId)?.weekdays ?? [];
};

/** The days on which a newer programme begins to hold, in order of time. */
const turns = (programmes: readonly Programme[], from: Day, to: Day): readonly Day[] => {
  const begins = programmes.map((one) => one.fromDay).filter((day) => day > from && day <= to);
  return [from, ...new Set(begins.sort())];
};

/**
 * Days with at least one exercise, from `from` to `to`, both included. One programme holds between two
 * turns, so its weekdays are looked up once for the stretch and not for every day of a record of years.
 */
export const plannedSessions = (
  programmes: readonly Programme[],
  from: Day,
  to: Day,
): readonly PlannedSession[] => {
  if (from > to) return [];
  const planned: PlannedSession[] = [];
  const starts = turns(programmes, from, to);
  for (const [place, start] of starts.entries()) {
    const weekdays = new Set(programmeOn(programmes, start)?.lines.flatMap((item) => item.weekdays));
    const next = starts[place + 1];
    const end = next === undefined ? dayNumber(to) + 1 : dayNumber(next);
    for (let number = dayNumber(start); number < end; number++) {
      if (weekdays.has(weekdayOfNumber(number))) planned.push({ day: dayFromNumber(number) });
    }
  }
  return planned;
};

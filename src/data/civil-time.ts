/** Instants and civil days in a time zone. */
import { Temporal } from 'temporal-polyfill';
import type { Day } from '#core/time/day.ts';

const at = (instant: number, zone: string) =>
  Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone);

/** The civil day an instant falls on in a zone. */
export const dayAt = (instant: number, zone: string): Day => at(instant, zone).toPlainDate().toString();

const quarterMs = 15 * 60_000;
const dayMinutes = 1440;
/** A clinic's answers fall on few quarters of an hour a day; beyond this many the oldest are forgotten. */
const mostQuarters = 100_000;
const quarterStarts = new Map<string, number>();

const readMinute = (instant: number, zone: string): number => {
  const time = at(instant, zone);
  return time.hour * 60 + time.minute;
};

/**
 * Minutes after local midnight, by the clock on the wall. Zones change their offset at whole quarters
 * of an hour, so the start of each quarter is looked up once and the minutes in it are counted on.
 */
export const minuteOfDay = (instant: number, zone: string): number => {
  const quarter = Math.floor(instant / quarterMs);
  const key = `${zone} ${quarter}`;
  let start = quarterStarts.get(key);
  if (start === undefined) {
    start = readMinute(quarter * quarterMs, zone);
    const [oldest] = quarterStarts.keys();
    if (quarterStarts.size >= mostQuarters && oldest !== undefined) quarterStarts.delete(oldest);
    quarterStarts.set(key, start);
  }
  return (start + Math.floor((instant - quarter * quarterMs) / 60_000)) % dayMinutes;
};

/** HH:MM by the clock on the wall. */
export const wallTime = (instant: number, zone: string): string => {
  const minute = minuteOfDay(instant, zone);
  return [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':');
};

/** The instant of a wall-clock time on a civil day; a time skipped by a clock change moves forward. */
export const instantAt = (day: Day, time: string, zone: string): number =>
  Temporal.PlainDate.from(day).toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(time) })
    .epochMilliseconds;

const midnights = new Map<string, number>();
/** Four weeks of days in a few zones are asked for over and over. */
const mostMidnights = 10_000;

/** The first instant of a civil day. */
export const midnightOf = (day: Day, zone: string): number => {
  const key = `${zone} ${day}`;
  const found = midnights.get(key) ?? instantAt(day, '00:00', zone);
  if (midnights.size >= mostMidnights) midnights.clear();
  midnights.set(key, found);
  return found;
};

/** Whether text names a zone the platform knows. */
export const isZone = (zone: string): boolean => {
  try {
    Temporal.Now.instant().toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
};

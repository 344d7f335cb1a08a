/** Instants and civil days in a time zone. */
import { Temporal } from 'temporal-polyfill';
import type { Day } from '#core/day.ts';

const at = (instant: number, zone: string) =>
  Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone);

/** The civil day an instant falls on in a zone. */
export const dayAt = (instant: number, zone: string): Day => at(instant, zone).toPlainDate().toString();

/** Minutes after local midnight, by the clock on the wall. */
export const minuteOfDay = (instant: number, zone: string): number => {
  const time = at(instant, zone);
  return time.hour * 60 + time.minute;
};

/** The instant of a wall-clock time on a civil day; a time skipped by a clock change moves forward. */
export const instantAt = (day: Day, time: string, zone: string): number =>
  Temporal.PlainDate.from(day).toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(time) })
    .epochMilliseconds;

/** Whether text names a zone the platform knows. */
export const isZone = (zone: string): boolean => {
  try {
    Temporal.Now.instant().toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
};

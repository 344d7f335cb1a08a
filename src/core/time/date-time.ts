/** A civil day with a time of day, as YYYY-MM-DDTHH:MM; where the time may be left out, the day alone. */
import { type Day, isDay } from './day.ts';

export interface DateTimeParts {
  readonly day: Day;
  /** HH:MM; null where none was given. */
  readonly time: string | null;
}

/** From 00:00 to 23:59. */
const timeOfDay = /^([01]\d|2[0-3]):[0-5]\d$/;

const isTimeOfDay = (text: string): boolean => timeOfDay.test(text);

export const dateTimeParts = (text: string): DateTimeParts | null => {
  const [day = '', time, ...more] = text.split('T');
  if (!isDay(day) || more.length > 0 || (time !== undefined && !isTimeOfDay(time))) return null;
  return { day, time: time ?? null };
};

export const isDateTime = (text: string, mayLackTime: boolean): boolean => {
  const parts = dateTimeParts(text);
  return parts !== null && (mayLackTime || parts.time !== null);
};

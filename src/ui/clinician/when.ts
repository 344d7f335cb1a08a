/** Instants as the clinic's wall shows them, and how long ago they were. */

import { dayInWords } from '#core/review/plain-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { dateFormat } from '#messages/formats.ts';

export interface ClinicClock {
  readonly zone: string;
  /** Clinical instant, epoch milliseconds. */
  readonly now: number;
}

type Parts = ReadonlyMap<string, string>;

const read = (instant: number, zone: string): Parts =>
  new Map(
    dateFormat('en-GB', {
      timeZone: zone,
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    })
      .formatToParts(instant)
      .map((part) => [part.type, part.value]),
  );

const minutes = new Map<string, Parts>();
/** A page says how long ago a few hundred instants were, and asks for its own now with each. */
const mostMinutes = 5000;

const parts = (instant: number, zone: string): Parts => {
  const key = `${zone} ${Math.floor(instant / 60_000)}`;
  const found = minutes.get(key) ?? read(instant, zone);
  if (minutes.size >= mostMinutes) minutes.clear();
  minutes.set(key, found);
  return found;
};

/** Civil day of the clinic at an instant. */
export const dayAt = (instant: number, zone: string): Day => {
  const at = parts(instant, zone);
  return `${at.get('year')}-${at.get('month')}-${at.get('day')}`;
};

export const today = ({ now, zone }: ClinicClock): Day => dayAt(now, zone);

/** "3 Feb, 18:40", with the year when it is not this one. */
export const momentInWords = (instant: number, clock: ClinicClock): string => {
  const at = parts(instant, clock.zone);
  const day = dayInWords(dayAt(instant, clock.zone), today(clock));
  return `${day}, ${at.get('hour')}:${at.get('minute')}`;
};

/** "today at 07:40", "yesterday", "6 days ago", "9 weeks ago". */
export const agoInWords = (instant: number, clock: ClinicClock): string => {
  const days = daysBetween(dayAt(instant, clock.zone), today(clock));
  if (days <= 0) {
    const at = parts(instant, clock.zone);
    return say('today-at', { time: `${at.get('hour')}:${at.get('minute')}` });
  }
  if (days === 1) return 'yesterday';
  return days < 60 ? say('days-ago', { days }) : say('weeks-ago', { weeks: Math.floor(days / 7) });
};

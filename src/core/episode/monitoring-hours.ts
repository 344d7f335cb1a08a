/** The hours in which a clinic reads what patients send, as data: checked once, said in every language. */
import type { Refusal } from '../outcome.ts';

export const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
export type Weekday = (typeof weekdays)[number];

export interface HoursOfDays {
  /** In the order of the week, at least one. */
  readonly days: readonly Weekday[];
  /** "HH:MM", 00:00 to 23:59, earlier than `to`. */
  readonly from: string;
  readonly to: string;
}

/** In the order of the week; no two overlap on a day. Empty: nobody reads at fixed hours. */
export type MonitoringHours = readonly HoursOfDays[];

const isTime = (text: string): boolean => /^([01]\d|2[0-3]):[0-5]\d$/.test(text);

const daysFrom = (text: string): readonly Weekday[] | null => {
  const [first, last = first, ...more] = text.split('-').map((name) => weekdays.indexOf(name as Weekday));
  if (first === undefined || last === undefined || more.length > 0) return null;
  return first < 0 || last < first ? null : weekdays.slice(first, last + 1);
};

const partFrom = (text: string): HoursOfDays | null => {
  const [dayText = '', timeText = '', ...more] = text.trim().split(/\s+/);
  const [from = '', to = '', ...times] = timeText.split('-');
  const days = daysFrom(dayText);
  const isRead = days !== null && more.length === 0 && times.length === 0;
  return isRead && isTime(from) && isTime(to) && from < to ? { days, from, to } : null;
};

const overlap = (one: HoursOfDays, other: HoursOfDays): boolean =>
  one.days.some((day) => other.days.includes(day)) && one.from < other.to && other.from < one.to;

/** Reads "Mon-Fri 08:30-18:30; Sat 09:00-12:00"; null where it cannot be read, or hours overlap. */
export const monitoringHoursFrom = (text: string): MonitoringHours | null => {
  const parts = text.split(';').map(partFrom);
  const hours = parts.filter((part) => part !== null);
  if (hours.length < parts.length) return null;
  const clashes = hours.some((one, place) => hours.slice(place + 1).some((other) => overlap(one, other)));
  return clashes ? null : hours;
};

/** As typed for each day: "8:30-12:00, 13:00-18:30"; empty where nobody reads. */
export type HoursByDay = Readonly<Record<Weekday, string>>;

const dayNames: Readonly<Record<Weekday, string>> = {
  Mon: 'Monday',
  Tue: 'Tuesday',
  Wed: 'Wednesday',
  Thu: 'Thursday',
  Fri: 'Friday',
  Sat: 'Saturday',
  Sun: 'Sunday',
};

export const hoursByDay = (hours: MonitoringHours): HoursByDay =>
  Object.fromEntries(
    weekdays.map((day) => [
      day,
      hours
        .filter(({ days }) => days.includes(day))
        .map(({ from, to }) => `${from}-${to}`)
        .sort()
        .join(', '),
    ]),
  ) as HoursByDay;

/** "8", "8:30" and "8.30" as "08:00" and "08:30"; null where it is no time. */
const timeFrom = (text: string): string | null => {
  const [, hour, minute = '00'] = /^(\d{1,2})(?:[:.](\d{2}))?$/.exec(text.trim()) ?? [];
  const time = `${(hour ?? '').padStart(2, '0')}:${minute}`;
  return hour !== undefined && isTime(time) ? time : null;
};

const spansFrom = (day: Weekday, text: string): readonly HoursOfDays[] | string => {
  const parts = text.split(/[,;]/).filter((part) => part.trim() !== '');
  const spans: HoursOfDays[] = [];
  for (const part of parts) {
    const [from = null, to = null, ...more] = part.split(/-|–|to|bis/).map(timeFrom);
    if (from === null || to === null || more.length > 0)
      return `${dayNames[day]}: write hours such as 8:30-12:00, 13:00-18:30, or leave it empty.`;
    if (from >= to) return `${dayNames[day]}: ${from} is not before ${to}. Write the earlier time first.`;
    spans.push({ days: [day], from, to });
  }
  const clash = spans.some((one, place) => spans.slice(place + 1).some((other) => overlap(one, other)));
  return clash ? `${dayNames[day]}: two of these hours overlap. Write them as one.` : spans;
};

export type HoursRead =
  | { readonly ok: true; readonly hours: MonitoringHours }
  | { readonly ok: false; readonly refused: readonly Refusal[] };

/** Days with the same hours together, in the order of the week; every day that cannot be read is named. */
export const monitoringHoursFromDays = (typed: Partial<HoursByDay>): HoursRead => {
  const read = weekdays.map((day) => [day, spansFrom(day, typed[day] ?? '')] as const);
  const refused = read.flatMap(([day, spans]): readonly Refusal[] =>
    typeof spans === 'string' ? [{ field: `hours.${day}`, code: 'inconsistent', reason: spans }] : [],
  );
  if (refused.length > 0) return { ok: false, refused };
  const together = new Map<string, HoursOfDays>();
  for (const [, spans] of read)
    for (const span of spans as readonly HoursOfDays[]) {
      const key = `${span.from}-${span.to}`;
      const days = [...(together.get(key)?.days ?? []), ...span.days];
      together.set(key, { ...span, days });
    }
  const first = ({ days, from }: HoursOfDays) => `${weekdays.indexOf(days[0]!)} ${from}`;
  const hours = [...together.values()].sort((one, other) => (first(one) < first(other) ? -1 : 1));
  return { ok: true, hours };
};

/** The hours in which a clinic reads what patients send, as data: checked once, said in every language. */
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

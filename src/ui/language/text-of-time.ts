/** Days, times of day, lengths of time and figures in words, in the language of the page. */
import { dateFormat, numberFormat } from '#messages/formats.ts';
import { spokenLanguage, t } from './words.ts';

/** The language that days and figures are in, for pages that write them in another form. */
export const localeOfDays = (): string => spokenLanguage().locale;

/** A figure with at most two places, the mark between them as the language writes it. */
export const numberText = (value: number): string =>
  numberFormat(localeOfDays(), { maximumFractionDigits: 2, useGrouping: false }).format(value);

/** "Monday 9 March", from a civil day; the same on every machine. */
export const dayText = (day: string): string =>
  dateFormat(localeOfDays(), {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  }).format(new Date(`${day}T12:00:00Z`));

/** "Monday 9 March 2026", to say a day back that was given in figures. */
export const wholeDayText = (day: string): string =>
  dateFormat(localeOfDays(), {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${day}T12:00:00Z`));

/** "9 March", where there is little room. */
export const shortDayText = (day: string): string =>
  dateFormat(localeOfDays(), { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
    new Date(`${day}T12:00:00Z`),
  );

/** "Monday", from its number; 1 is Monday. */
export const weekdayText = (weekday: number): string =>
  dateFormat(localeOfDays(), { weekday: 'long', timeZone: 'UTC' }).format(
    new Date(Date.UTC(2024, 0, weekday)),
  );

/** "18:42" on this phone's clock. */
export const timeText = (instant: number): string =>
  new Intl.DateTimeFormat(localeOfDays(), { hour: '2-digit', minute: '2-digit' }).format(new Date(instant));

/** "18:42", from a time of day written as HH:MM: at the clinic, whatever zone the phone is in. */
export const clockTimeText = (time: string): string =>
  dateFormat(localeOfDays(), { hour: '2-digit', minute: '2-digit', timeZone: 'UTC' }).format(
    new Date(`2026-01-01T${time}:00Z`),
  );

export const instantDayText = (instant: number): string =>
  new Intl.DateTimeFormat(localeOfDays(), { day: 'numeric', month: 'long' }).format(new Date(instant));

/** "1:05" for a clock that counts down; whole seconds, rounded up so that it shows 0 only at the end. */
export const clockText = (seconds: number): string => {
  const whole = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};

const part = (count: number, word: 'second' | 'minute'): string => t(`length.${word}`, { count });

/** "6 minutes", "6 minutes 30 seconds", "45 seconds". */
export const lengthText = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  const rest = Math.round(seconds % 60);
  if (minutes === 0) return part(rest, 'second');
  return rest === 0 ? part(minutes, 'minute') : `${part(minutes, 'minute')} ${part(rest, 'second')}`;
};

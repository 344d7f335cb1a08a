/** A day typed in parts, kept as one text: whole it is YYYY-MM-DD, before that the parts as they stand. */
import { isDay } from '#core/time/day.ts';

export type PartOfDay = 'day' | 'month' | 'year';

export const birthParts: Readonly<Record<PartOfDay, { readonly label: string; readonly size: number }>> = {
  day: { label: 'Day', size: 2 },
  month: { label: 'Month', size: 2 },
  year: { label: 'Year', size: 4 },
};

/** What stands for a day that the browser could not read: never empty, and no day. */
export const notADay = '?';

export const partsOfDay = (text: string): Readonly<Record<PartOfDay, string>> => {
  const [year = '', month = '', day = ''] = text === notADay ? [] : text.split('-');
  return isDay(text)
    ? { year, month: String(Number(month)), day: String(Number(day)) }
    : { year, month, day };
};

const padded = (text: string): string => text.trim().padStart(2, '0');

/** Empty where nothing is typed. */
export const dayOfParts = ({ day, month, year }: Readonly<Record<PartOfDay, string>>): string => {
  if (!day && !month && !year) return '';
  const whole = `${year.trim()}-${padded(month)}-${padded(day)}`;
  // "3" of a month is not yet March while "31" may follow: what is typed stays as it is until all three stand.
  return day && month && isDay(whole) ? whole : `${year}-${month}-${day}`;
};

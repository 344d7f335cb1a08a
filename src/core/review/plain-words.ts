/** Days, figures and counts as they stand in a sentence. */
import type { Joint } from '../exercises/joints.ts';
import { moreThanUsual, type Swelling, type SwellingQuestion } from '../record/morning-questions.ts';
import type { Day } from '../time/day.ts';
import { gramsOf, isInGrams } from '../units/units.ts';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "3 Feb" of the year the reader is in, "3 Feb 2025" otherwise. */
export const dayInWords = (day: Day, today?: Day): string => {
  const [year = '', month = '', date = ''] = day.split('-');
  const short = `${Number(date)} ${months[Number(month) - 1]}`;
  return today?.startsWith(year) ? short : `${short} ${year}`;
};

export const jointInWords = (joint: Joint): string => joint.replaceAll('-', ' ');

/** At most one decimal; never more precise than what was logged. */
export const figure = (value: number): string => String(Math.round(value * 10) / 10);

/** "250 g", "4.5 kg"; no more than ten grams are lost of it. */
export const massInWords = (kg: number): string =>
  isInGrams(kg) ? `${gramsOf(kg)} g` : `${Math.round(kg * 100) / 100} kg`;

export const withUnit = (value: number, unit: string): string =>
  unit === '' ? figure(value) : `${figure(value)} ${unit}`;

/** Of the first signed dose: "1.00", "1.17". */
export const shareInWords = (share: number): string => share.toFixed(2);

/** "1 session", "3 sessions". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c"; of a longer list the first ones and how many more. */
export const listed = (parts: readonly string[], most = 4): string => {
  const shown = parts.slice(0, most);
  const more = parts.length - shown.length;
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
};

const swellingWords = {
  absolute: { none: 'none', slight: 'slight', clear: 'clear', severe: 'severe' },
  'more-than-usual': moreThanUsual,
} as const;

/** The answer in the words of its question, so that answers to different questions are never read as one. */
export const swellingInWords = (swelling: Swelling, question: SwellingQuestion): string =>
  swellingWords[question][swelling];

/** English papers say it in the core's own words. */
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { dayInWords, figure } from '#core/review/plain-words.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';

export const phrases: ColleaguePhrases = {
  day: dayInWords,
  figure,
  title: ({ title }) => title,
  unit: ({ drawn }) => drawn.unit,
  reading: (_line, text) => text,
  change: ({ change }) => change.sentence,
  limit: limitLine,
  reason: ({ text }) => text,
  term: (term) => term,
};

/** English papers say it in the core's own words. */
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { treatmentTitle } from '#core/episode/treatment/treatment-classes.ts';
import { dayInWords, figure, swellingInWords } from '#core/review/plain-words.ts';
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { detailText } from '../../screening.ts';

export const phrases: ColleaguePhrases = {
  day: dayInWords,
  figure,
  title: ({ title }) => title,
  unit: ({ drawn }) => drawn.unit,
  reading: (_line, text) => text,
  change: ({ change }) => change.sentence,
  sideDifference: ({ sentence }) => sentence,
  limit: limitLine,
  reason: ({ text }) => text,
  swelling: swellingInWords,
  medicine: treatmentTitle,
  detail: (item, detail) => detailText(`${item}.${detail}` as ScreeningDetailKey).en,
  remark: (remark) => remark,
  term: (term) => term,
  threshold: (threshold) => threshold,
  danger: ({ sentence }) => sentence,
};

/** English papers say it in the core's own words. */
import { limitLine } from '#core/episode/documents/limit-line.ts';
import { dayInWords, figure, swellingInWords } from '#core/review/plain-words.ts';
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import { medicineClasses } from '#core/screening/medicine-classes.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { detailText } from '../../screening.ts';

export const phrases: ColleaguePhrases = {
  day: dayInWords,
  figure,
  title: ({ title }) => title,
  unit: ({ drawn }) => drawn.unit,
  reading: (_line, text) => text,
  change: ({ change }) => change.sentence,
  limit: limitLine,
  reason: ({ text }) => text,
  swelling: swellingInWords,
  medicine: ({ act, medicineClass }) =>
    `${medicineClasses.find(({ id }) => id === medicineClass)?.title ?? medicineClass}, ${act}`,
  detail: (item, detail) => detailText(`${item}.${detail}` as ScreeningDetailKey).en,
  remark: (remark) => remark,
  term: (term) => term,
};

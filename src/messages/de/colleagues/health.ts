/** Medicines, swelling and what was ticked, in German. */
import type { ScreeningDetailKey } from '#core/screening/detail-keys.ts';
import type { ColleaguePhrases } from '../../papers/colleague-phrases.ts';
import { detailText } from '../../screening.ts';

const medicines: Readonly<Record<string, string>> = {
  'blood-thinner': 'Gerinnungshemmer oder Plättchenhemmer',
  'hormone-pill-or-patch': 'Östrogenhaltige Verhütung oder Hormontherapie',
  testosterone: 'Testosteron oder Anabolikum',
  'blood-pressure-tablet': 'Betablocker, anderes Blutdruckmittel, Diuretikum',
  'insulin-or-sulfonylurea': 'Insulin oder Sulfonylharnstoff',
  'long-term-steroid': 'Kortikosteroid über Monate',
  statin: 'Statin',
  colchicine: 'Colchicin',
  'jak-inhibitor': 'JAK-Hemmer',
  biologic: 'Biologikum',
  'recent-quinolone': 'Chinolon in den letzten Wochen',
  'disease-modifying': 'Konventionelles Basismedikament',
  other: 'Ein anderes Medikament',
};

const swellings = {
  absolute: { none: 'keine', slight: 'leicht', clear: 'deutlich', severe: 'stark' },
  'more-than-usual': {
    none: 'nicht mehr als üblich',
    slight: 'etwas mehr als üblich',
    clear: 'deutlich mehr als üblich',
    severe: 'viel mehr als üblich',
  },
} as const;

export const health: Pick<ColleaguePhrases, 'medicine' | 'swelling' | 'detail'> = {
  medicine: (medicineClass) => medicines[medicineClass] ?? medicineClass,
  swelling: (swelling, question) => swellings[question][swelling],
  detail: (item, detail) => medicines[detail] ?? detailText(`${item}.${detail}` as ScreeningDetailKey).de,
};

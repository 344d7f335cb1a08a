/** A dose on paper, where nobody has chosen a unit: weights are in kilograms. */

import type { Dose } from '#core/prescribing/dose.ts';
import { gramsOf, isInGrams } from '#core/units/units.ts';
import { type DoseSpeech, doseLines, doseTitle } from '../doses.ts';
import { everyLanguage } from '../every-language.ts';
import { listed } from '../formats.ts';
import type { LanguageTag } from '../languages.ts';
import { pageWord } from '../page-words.ts';

export const paperSpeech = (tag: LanguageTag): DoseSpeech => ({
  say: (key, ...values) => pageWord(tag, key, ...values),
  weight: (kg) =>
    isInGrams(kg)
      ? pageWord(tag, 'weight.g', { number: gramsOf(kg) })
      : pageWord(tag, 'weight.kg', { number: Number(kg.toFixed(2)) }),
  list: (parts) => listed(parts, everyLanguage[tag].locale),
});

/** The whole dose in one line. */
export const doseText = (dose: Dose, speech: DoseSpeech): string =>
  [doseTitle(dose, speech), ...doseLines(dose, speech)].join('; ');

/** How a paper that goes to colleagues is said in one language. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { cautionText } from '../cautions.ts';
import { phrases as german } from '../de/colleagues/phrases.ts';
import { phrases as english } from '../en/colleagues/phrases.ts';
import { everyLanguage } from '../every-language.ts';
import { exerciseName } from '../exercises.ts';
import type { LanguageTag } from '../languages.ts';
import { pageWord } from '../page-words.ts';
import type { Args, Same, Sentence } from '../sentence.ts';
import { translate } from '../translate.ts';
import type { ColleaguePhrases } from './colleague-phrases.ts';
import { paperSpeech } from './paper-speech.ts';

/** Whoever adds a language adds what it says to colleagues, or leaves these papers in English. */
const phrasesOf: Readonly<Record<LanguageTag, ColleaguePhrases>> = { en: english, de: german };

const quotes: Readonly<Record<LanguageTag, readonly [string, string]>> = { en: ['“', '”'], de: ['„', '“'] };

export const colleagueSpeech = (tag: LanguageTag) => {
  const { forms, locale } = everyLanguage[tag];
  const [open, close] = quotes[tag];
  return {
    ...phrasesOf[tag],
    tag,
    dose: paperSpeech(tag),
    joint: (joint: Joint): string => forms.joint?.(joint, 'label') ?? joint,
    limb: (limb: string): string => forms.limb?.(limb, 'label') ?? limb,
    exercise: (id: string): string => (tag === 'en' ? exerciseTitle(id) : exerciseName(id)[tag]),
    flag: (flag: RedFlag): string => pageWord(tag, `flag.${flag}`),
    /** The clinician's words where the record has them; in another language the patient's. */
    caution: ({ text, patient }: Caution): string => (tag === 'en' ? text : cautionText(patient)[tag]),
    quoted: (text: string): string => `${open}${text}${close}`,
    locale,
  };
};
export type ColleagueSpeech = ReturnType<typeof colleagueSpeech>;

/** The words of one paper, said by key in the language asked for. */
export const sayFrom =
  <Words extends Readonly<Record<string, Sentence>>>(words: Readonly<Record<LanguageTag, Same<Words>>>) =>
  (tag: LanguageTag) =>
  <Key extends keyof Words & string>(key: Key, ...[values]: Args<Words[Key]>): string =>
    translate(words[tag][key], values ?? {}, { locale: everyLanguage[tag].locale, forms: {} });

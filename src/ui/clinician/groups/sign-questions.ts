/** Warning signs in the very words the phone asks in, in the language the person is asked in. */
import { familiesAsked, signsListed } from '#core/danger/signs-asked.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { forms as germanForms } from '#messages/de/forms.ts';
import { words as germanQuestions } from '#messages/de/pages/questions.ts';
import { words as germanSigns } from '#messages/de/pages/warning-signs.ts';
import { words as questionWords } from '#messages/en/pages/questions.ts';
import { words as signWords } from '#messages/en/pages/warning-signs.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { askIn, askWith } from '#messages/say.ts';

export const sayQuestion = askIn(questionWords);

const askGerman = askWith({ locale: languages[1].locale, forms: germanForms });

/** One entry for each language; a new one does not compile without. */
const questions: Readonly<Record<LanguageTag, (key: keyof typeof questionWords & string) => string>> = {
  en: (key) => (sayQuestion as (key: string) => string)(key),
  de: (key) => (askGerman(germanQuestions) as (key: string) => string)(key),
};
const signs: Readonly<Record<LanguageTag, (key: keyof typeof signWords & string) => string>> = {
  en: (key) => (askIn(signWords) as (key: string) => string)(key),
  de: (key) => (askGerman(germanSigns) as (key: string) => string)(key),
};

export type SignQuestion = 'flags.short' | 'flags.before' | 'flags.during' | 'flags.no-none';

export const signQuestion = (tag: LanguageTag, key: SignQuestion): string => questions[tag](key);

export const familyLines = (hasCuff: boolean, tag: LanguageTag): readonly string[] =>
  familiesAsked(hasCuff).map((family) => signs[tag](`family.${family}`));

export const signOptions = (
  hasCuff: boolean,
  tag: LanguageTag,
): readonly { readonly value: RedFlag; readonly label: string }[] =>
  signsListed(hasCuff).map((flag) => ({ value: flag, label: signs[tag](`flag.${flag}`) }));

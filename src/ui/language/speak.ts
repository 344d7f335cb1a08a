/** Fetches the words of another language, page by page: a phone carries those of the pages it shows. */
import type { words as frameWords } from '#messages/en/pages/frame.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { Grammar } from '#messages/translate.ts';
import { type Loaded, loadsOfPages, setLanguage, type Words } from './words.ts';

/** The frame, and with it how the language writes joints and days. */
const frameIn = (tag: LanguageTag): Promise<Loaded<typeof frameWords> & Pick<Grammar, 'forms'>> =>
  import(`../../messages/${tag}/pages/frame.ts`);

/**
 * Shows this browser everything in a language, once all of it is here. The answer is the language shown:
 * where a part cannot be had, all stays English.
 */
export const speak = async (tag: LanguageTag): Promise<LanguageTag> => {
  const language = languages.find((one) => one.tag === tag) ?? languages[0];
  setLanguage();
  if (language.tag === 'en') return 'en';
  try {
    const [frame, ...parts] = await Promise.all([frameIn(tag), ...loadsOfPages().map((load) => load(tag))]);
    const words = Object.assign({}, frame.words, ...parts.map((part) => part.words)) as Words;
    setLanguage({ tag, locale: language.locale, forms: frame.forms, words });
    return tag;
  } catch {
    return 'en';
  }
};

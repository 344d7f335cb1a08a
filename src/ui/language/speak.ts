/** Fetches the words of another language, page by page: a phone carries those of the pages it shows. */
import type { words as frameWords } from '#messages/en/pages/frame.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { Same } from '#messages/sentence.ts';
import type { Grammar } from '#messages/translate.ts';
import { stringsIn } from './bridge/strings-in.ts';
import { addEnglish, setLanguage, type Words } from './words.ts';

interface Loaded<W> {
  readonly words: Same<W>;
}

type Load<W> = (tag: LanguageTag) => Promise<Loaded<W>>;

const loads: Load<Words>[] = [];

/**
 * Gives a page its words: the English, and how to fetch the same in another language. Called where the page's
 * frame is read, so that it is known before `speak`. Each page names its own file, or the phone would carry all.
 */
export const provide = <W extends Words>(english: W, load: Load<W>): void => {
  addEnglish(english);
  loads.push(load as Load<Words>);
};

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
    const [frame, translate, ...parts] = await Promise.all([
      frameIn(tag),
      stringsIn(tag),
      ...loads.map((load) => load(tag)),
    ]);
    const words = Object.assign({}, frame.words, ...parts.map((part) => part.words)) as Words;
    setLanguage({ tag, locale: language.locale, forms: frame.forms, words, translate });
    return tag;
  } catch {
    return 'en';
  }
};

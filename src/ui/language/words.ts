/**
 * The words of the patient's pages, in the language spoken in this browser. The server speaks English only:
 * one process answers many people.
 */
import { forms } from '#messages/en/forms.ts';
import { words as frameWords } from '#messages/en/pages/frame.ts';
import type { pages } from '#messages/en/pages.ts';
import { listed } from '#messages/formats.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { Args, Same, Sentence } from '#messages/sentence.ts';
import type { Text } from '#messages/text.ts';
import { translate as filledIn, type Grammar } from '#messages/translate.ts';

type English = typeof pages;
export type WordKey = keyof English;

/** Keys of sentences that need no value. */
export type PlainWordKey = {
  readonly [Key in WordKey]: Args<English[Key]> extends [] ? Key : never;
}[WordKey];

export type Words = Readonly<Record<string, Sentence>>;

export interface Spoken extends Grammar {
  readonly tag: LanguageTag;
  readonly words: Words;
}

/** What every page says, and what the pages that were read so far have added. */
let english: Words = frameWords;
const plain: Spoken = { tag: 'en', locale: languages[0].locale, forms, words: {} };
let spoken = plain;

/** The English of a page, which comes with the page. */
export const addEnglish = (words: Words): void => {
  english = { ...english, ...words };
};

export interface Loaded<W> {
  readonly words: Same<W>;
}

type Load<W> = (tag: LanguageTag) => Promise<Loaded<W>>;

const loads: Load<Words>[] = [];

/**
 * Gives a page its words: the English, and how to fetch the same in another language. Called where the page's
 * frame is read, so that it is known before `speak`. Each page names its own file, or the phone would carry all.
 */
export const provide = <W extends Words>(words: W, load: Load<W>): void => {
  addEnglish(words);
  loads.push(load as Load<Words>);
};

export const loadsOfPages = (): readonly Load<Words>[] => loads;

/** What is shown from now on in this browser; English without an argument. Never called on the server. */
export const setLanguage = (language: Spoken = plain): void => {
  spoken = language;
};

export const spokenLanguage = (): Spoken => spoken;

/**
 * What the server sent, in the language spoken. What is stored and sent stays as it was made. A plain string,
 * from a session begun before texts came in every language, stays as it is; a text from before a language was
 * added is said in English.
 */
export const translate = (text: Text | string): string =>
  typeof text === 'string' ? text : ((text as Partial<Text>)[spoken.tag] ?? text.en);

/**
 * A sentence of the page with its values. What a language lacks is said in English, values in English forms
 * too; a key that no page gave is a mistake and stays visible as it is.
 */
export const t = <Key extends WordKey>(key: Key, ...[values]: Args<English[Key]>): string => {
  const sentence = spoken.words[key];
  return sentence === undefined
    ? filledIn(english[key] ?? key, values ?? {}, plain)
    : filledIn(sentence, values ?? {}, spoken);
};

/** "Monday, Wednesday and Friday", in the language spoken. */
export const listText = (parts: readonly string[]): string => listed(parts, spoken.locale);

/**
 * Every language with all its sentences. For the server and the commands only: a page fetches the words it
 * shows, and what is named here would travel to every phone.
 */
import type { sentences as english } from './en/language.ts';
import type { Language } from './language.ts';
import { type LanguageTag, languages } from './languages.ts';
import type { Args, Sentence } from './sentence.ts';
import { type Text, textBy } from './text.ts';
import { type Grammar, translate } from './translate.ts';

export type SpokenLanguage = Language & Grammar;

const load = async ({ tag, locale }: (typeof languages)[number]) => {
  const { language }: { readonly language: Language } = await import(`./${tag}/language.ts`);
  return [tag, { ...language, locale }] as const;
};

export const everyLanguage = Object.fromEntries(await Promise.all(languages.map(load))) as Readonly<
  Record<LanguageTag, SpokenLanguage>
>;

/** Exercises have a name and steps instead of one sentence a key. */
type English = Omit<typeof english, 'exercises'>;
export type Area = keyof English;

type Given = Readonly<Record<string, string | number | Text>>;

const inLanguage = (given: Given, tag: LanguageTag) =>
  Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, typeof value === 'object' ? value[tag] : value]),
  );

/**
 * A sentence in every language, its values filled in. A value may itself be a text in every language.
 * What the sentence needs is checked against the English one.
 */
export const textOf = <A extends Area, K extends keyof English[A] & string>(
  area: A,
  key: K,
  ...[given]: Args<English[A][K], Text>
): Text =>
  textBy((tag) => {
    const language = everyLanguage[tag];
    const sentences: Readonly<Record<string, Sentence>> = language.sentences[area];
    const sentence = sentences[key];
    // An id of an old row that no list has any more is shown as it is.
    return sentence === undefined
      ? key
      : translate(sentence, inLanguage((given ?? {}) as Given, tag), language);
  });

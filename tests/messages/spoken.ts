/**
 * What is asked of the sentences of a language and no type can say: what they may not hold, how what a person
 * must do is said in it. One file a language beside this one, read by its tag: a language without one fails.
 */
import { type LanguageTag, languages } from '#messages/languages.ts';
import type { Act, Count } from './acts.ts';

export interface Spoken {
  /** What no sentence may say, and the marks that pages do not use; they may quote a button in the right ones. */
  readonly unwanted: readonly RegExp[];
  readonly marksOfPages: RegExp;
  /** Of the name of an exercise. */
  readonly mostWordsOfName: number;
  /** What is never said of a back. */
  readonly frightening: RegExp;
  /** Colours that only some skins turn. */
  readonly skinColours: RegExp;
  /** Of the caution wording by its number; a row is never changed, only added. A later language begins later. */
  readonly cautionDigests: Readonly<Record<number, string>>;
  /** How each act is said. null = the language is English. */
  readonly acts: Readonly<Record<Act, RegExp>> | null;
  /** A count, a time or a share written as a word. null = the language is English. */
  readonly counts: Readonly<Record<Count, RegExp>> | null;
}

const load = async (tag: LanguageTag) => {
  const { spoken }: { readonly spoken: Spoken } = await import(`./spoken/${tag}.ts`);
  return [tag, spoken] as const;
};

export const spokenIn = Object.fromEntries(
  await Promise.all(languages.map(({ tag }) => load(tag))),
) as Readonly<Record<LanguageTag, Spoken>>;

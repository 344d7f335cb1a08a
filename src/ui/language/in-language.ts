/** The words of a language, fetched when they are asked for. English stands in the pages themselves. */

import type { LanguageTag } from '#messages/languages.ts';
import type { WordKey } from './words.ts';

export interface LanguageWords {
  readonly words: Readonly<Partial<Record<WordKey, string>>>;
  /** Tells what the core says; left out where it says it in English. */
  readonly translate?: (text: string) => string;
}

export const wordsIn = async (tag: LanguageTag): Promise<LanguageWords> => {
  if (tag === 'en') return { words: {} };
  const { german, translateToGerman } = await import('./bridge/german.ts');
  return { words: german, translate: translateToGerman };
};

/** The words of a language, fetched when they are asked for. English stands in the pages themselves. */

import type { LanguageTag } from '#messages/languages.ts';
import type { WordKey } from './words.ts';

export const wordsIn = async (tag: LanguageTag): Promise<Readonly<Partial<Record<WordKey, string>>>> =>
  tag === 'en' ? {} : (await import('#messages/de/pages.ts')).pages;

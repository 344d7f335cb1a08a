/** A sentence of a page in any language, where the server writes it itself: a title, a page of its own, a paper. */
import type { pages } from './en/pages.ts';
import { everyLanguage } from './every-language.ts';
import type { LanguageTag } from './languages.ts';
import type { Args } from './sentence.ts';
import { translate } from './translate.ts';

export type PageWordKey = keyof typeof pages;

export const pageWord = <Key extends PageWordKey>(
  tag: LanguageTag,
  key: Key,
  ...[values]: Args<(typeof pages)[Key]>
): string => translate(everyLanguage[tag].pages[key], values ?? {}, everyLanguage[tag]);

/** Every sentence in English beside the same one in each other language, the cases of one sentence together. */
import { everyLanguage } from '#messages/every-language.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { everyRow } from '#messages/sentence-rows.ts';

export const otherTags = languages.map(({ tag }) => tag).filter((tag) => tag !== 'en');

export interface Pair {
  readonly area: string;
  readonly key: string;
  readonly english: string;
  readonly told: string;
}

const textsOf = (tag: LanguageTag): ReadonlyMap<string, string> => {
  const texts = new Map<string, string>();
  for (const { area, key, text } of everyRow(everyLanguage[tag])) {
    const name = `${area} ${key}`;
    const before = texts.get(name);
    texts.set(name, before === undefined ? text : `${before} ${text}`);
  }
  return texts;
};

export const pairsWith = (tag: LanguageTag): readonly Pair[] => {
  const told = textsOf(tag);
  return [...textsOf('en')].map(([name, english]) => {
    const [area = '', key = ''] = name.split(' ');
    return { area, key, english, told: told.get(name) ?? '' };
  });
};

export const pairs: readonly Pair[] = otherTags.flatMap(pairsWith);

/** Colons end a sentence as full stops do. */
export const partsOf = (text: string): readonly string[] => text.replace(/([.!?:])\s+/g, '$1\n').split('\n');

/** The figures of a text with their unit, decimals and the space between written alike. */
export const figuresOf = (text: string): readonly string[] =>
  [...text.matchAll(/\d+(?:[.,]\d+)?\s?(?:kg|cm|°|mmHg|%)?/g)]
    .map(([found]) => found.replace(',', '.').replace(/\s/g, ' ').trim())
    .sort();

/** What the tests of the German sentences share: one file of them, its patterns, its figures, its length. */
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import type { Sentences } from '#ui/language/bridge/translator.ts';

/** The sentences of the files whose name begins so. */
export const sentencesOf = (concern: string): Sentences =>
  Object.assign(
    {},
    ...Object.entries(sentenceFiles)
      .filter(([name]) => name.startsWith(concern))
      .map(([, sentences]) => sentences),
  );

const slots = /\{[#=]?[a-z-]+\}/g;

/** Whether a text of the core is said by this English, values and all. */
export const says = (english: string, text: string): boolean =>
  english.includes('{')
    ? new RegExp(`^${english.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(slots, '.+')}$`).test(text)
    : english === text;

/** The figures of a text with their unit, decimals and the space between written alike. */
export const figuresOf = (text: string): readonly string[] =>
  [...text.matchAll(/\d+(?:[.,]\d+)?\s?(?:kg|cm|°|mmHg|%)?/g)]
    .map(([found]) => found.replace(',', '.').replace(/\s/g, ' ').trim())
    .sort();

/** Colons end a sentence here as in the test of the English words. */
export const partsOf = (text: string): readonly string[] => text.replace(/([.!?:])\s+/g, '$1\n').split('\n');

export const longParts = (text: string): readonly string[] =>
  partsOf(text).filter((part) => part.split(/\s+/).length > 20);

/** The names a sentence needs, sorted, all its cases together. */
import type { Sentence } from '#messages/sentence.ts';

export const slotsIn = (sentence: Sentence): readonly string[] => {
  const texts = typeof sentence === 'string' ? [sentence] : Object.values(sentence);
  return [...new Set(texts.flatMap((text) => text.match(/\{[a-z-]+/g) ?? []))].sort();
};

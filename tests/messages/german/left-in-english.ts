/** What is left of English in a sentence told in German, and whether its figures stayed. */
import { figuresOf } from '../german-sentences.ts';

/** Words that no German sentence has. Names and texts that people typed carry none of them in these tests. */
const englishWords =
  /\b(the|you|your|is|are|of|and|with|until|again|not|do|before|stop|we|it|this|that|to|or|left|right|sets?|repetitions?|today|ring|instead|less|more|pain|joint|there|side|rest|from|for|on|at)\b/i;

export const leftInEnglish = (text: string): string | null => englishWords.exec(text)?.[0] ?? null;

/** What is wrong with a text and what was told for it; null when nothing is. */
export const wrongWith = (english: string, told: string): string | null => {
  if (told === english) return `stayed English: ${english}`;
  const left = leftInEnglish(told);
  if (left) return `“${left}” is left in: ${told}`;
  return JSON.stringify(figuresOf(english)) === JSON.stringify(figuresOf(told))
    ? null
    : `other figures: ${english} → ${told}`;
};

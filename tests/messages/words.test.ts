/** What patients read: plain, calm, and without the words of the trade or of the program. */
import { describe, expect, it } from 'vitest';
import { everyWord } from '#ui/language/every-word.ts';
import { t } from '#ui/language/words.ts';

const words = Object.entries(everyWord).map(([key, text]) => ({ key, text }));

/** Groups of vowels, a silent e at the end left out; at least one. A rough count, the same for every text. */
const syllables = (word: string): number => {
  const groups = word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/e$/, '')
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 0);
};

const plain = (text: string): string => text.replace(/\{[a-z-]+\}/g, 'knee');

/** School grade by Flesch and Kincaid (1975; coefficients from memory): 0.39 words/sentence + 11.8 syllables/word − 15.59. */
const grade = (text: string): number => {
  const sentences = Math.max(1, text.split(/[.!?:]+\s|[.!?:]+$/).filter((part) => part.trim() !== '').length);
  const list = text.split(/\s+/).filter((word) => /[a-z]/i.test(word));
  const sounds = list.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (list.length / sentences) + 11.8 * (sounds / list.length) - 15.59;
};

const sentencesOf = (text: string) => plain(text).split(/(?<=[.!?:])\s+/);

const unwanted = [
  /\brungs?\b/i,
  /\blevels?\b/i,
  /\bunlock/i,
  /\bgates?\b/i,
  /\bcaps?\b/i,
  /\bsafe(ly|ty|r|st)?\b/i,
  /\bstreak|\bbadge|\breward|\bgoal\b/i,
  /\bplease\b|\bsorry\b|\binvalid\b|\boops\b/i,
  /\bocclusion\b|\brestriction\b|\bRPE\b|\bRIR\b|\b1RM\b/i,
  /\bfailed\b|\bfailure\b/i,
];

describe('sentences for patients', () => {
  it('carry no word of the trade, of games, or of reassurance', () => {
    const found = words.flatMap(({ key, text }) =>
      unwanted.filter((pattern) => pattern.test(text)).map((pattern) => `${key}: ${pattern}`),
    );
    expect(found).toEqual([]);
  });

  it('have at most 20 words each', () => {
    const found = words.flatMap(({ key, text }) =>
      sentencesOf(text)
        .filter((sentence) => sentence.split(/\s+/).length > 20)
        .map((sentence) => `${key}: ${sentence}`),
    );
    expect(found).toEqual([]);
  });

  it('taken together read at a school grade of 6 or lower, and none of length above 9', () => {
    const all = words.map(({ text }) => (/[.!?:]$/.test(text) ? plain(text) : `${plain(text)}.`)).join(' ');
    expect(grade(all)).toBeLessThanOrEqual(6);
    // Of a label of a few words a grade says nothing.
    const hard = words
      .filter(({ text }) => plain(text).split(/\s+/).length >= 8)
      .map(({ key, text }) => ({ key, grade: grade(plain(text)) }))
      .filter((word) => word.grade > 9);
    expect(hard).toEqual([]);
  });

  it('the measure tells a hard sentence from an easy one', () => {
    expect(grade('Sit down. Take it off.')).toBeLessThan(3);
    expect(grade('Discontinue the intervention upon deterioration of symptomatology.')).toBeGreaterThan(15);
  });

  it('fill in what belongs in the braces, and show a brace that was left empty', () => {
    expect(t('today.title', { name: 'Ana' })).toBe('Hello Ana');
    expect(t('today.title')).toBe('Hello {name}');
  });
});

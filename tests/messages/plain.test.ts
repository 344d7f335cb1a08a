/** What a patient is told by the core and the server: short, plain, and without the words of the trade. */
import { describe, expect, it } from 'vitest';
import { everyLanguage } from '#messages/every-language.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { everyRow } from '#messages/sentence-rows.ts';
import { partsOf } from './pairs.ts';
import { spokenIn } from './spoken.ts';

const marks = /["“”]|--| - /;
const everyTag = languages.map(({ tag }) => tag);
const rowsIn = (tag: LanguageTag) => everyRow(everyLanguage[tag]);

const wordCount = (text: string): number => text.split(/\s+/).length;

describe.each(everyTag)('every sentence in %s', (tag) => {
  const rows = rowsIn(tag);
  const { unwanted, marksOfPages } = spokenIn[tag];

  it('carries no word of the trade, of games, or of reassurance, and the marks of the language', () => {
    const found = rows.flatMap(({ area, key, text }) =>
      [...unwanted, area === 'pages' ? marksOfPages : marks]
        .filter((pattern) => pattern.test(text.replace(/\{[^}]*\}/g, '')))
        .map((pattern) => `${area} ${key}: ${pattern}`),
    );
    expect(found).toEqual([]);
  });

  it('has at most 20 words', () => {
    const found = rows.flatMap(({ area, key, text }) =>
      partsOf(text)
        .filter((part) => wordCount(part) > 20)
        .map(() => `${area} ${key}`),
    );
    expect(found).toEqual([]);
  });

  it('is said in full, with no space too many', () => {
    expect(rows.filter(({ text }) => text === '' || /^\s|\s$|\s\s/.test(text))).toEqual([]);
  });
});

/** Groups of vowels, a silent e at the end left out; at least one. A rough count, the same for every text. */
const syllables = (word: string): number => {
  const groups = word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/e$/, '')
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 0);
};

/** School grade by Flesch and Kincaid (1975; coefficients from memory): 0.39 words/sentence + 11.8 syllables/word − 15.59. */
const grade = (text: string): number => {
  const sentences = Math.max(1, text.split(/[.!?:]+\s|[.!?:]+$/).filter((part) => part.trim() !== '').length);
  const list = text.split(/\s+/).filter((word) => /[a-z]/i.test(word));
  const sounds = list.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (list.length / sentences) + 11.8 * (sounds / list.length) - 15.59;
};

/** Harder than they should be, most by the name of an illness; the list only gets shorter. */
const tooHard: readonly string[] = [
  'cautions screening-new-chest-faint-or-breath',
  'screening-questions heart-condition',
  'screening-questions head-pressure-or-eye',
  'screening-questions antiphospholipid-antibodies',
  'screening-questions arthritis-medicines',
  'screening-questions rheumatoid-arthritis',
];

describe('English', () => {
  const texts = rowsIn('en').map((row) => ({ ...row, text: row.text.replace(/\{[^}]*\}/g, 'knee') }));

  it('taken together reads at a school grade of 6 or lower', () => {
    const all = texts.map(({ text }) => (/[.!?:]$/.test(text) ? text : `${text}.`)).join(' ');
    expect(grade(all)).toBeLessThanOrEqual(6);
  });

  it('has no sentence of length above grade 9, but for those that are known to be harder', () => {
    // Of a label of a few words a grade says nothing.
    const hard = texts.filter(({ text }) => wordCount(text) >= 8 && grade(text) > 9);
    expect(hard.map(({ area, key }) => `${area} ${key}`)).toEqual(tooHard);
  });

  it('is measured so that a hard sentence is told from an easy one', () => {
    expect(grade('Sit down. Take it off.')).toBeLessThan(3);
    expect(grade('Discontinue the intervention upon deterioration of symptomatology.')).toBeGreaterThan(15);
  });
});

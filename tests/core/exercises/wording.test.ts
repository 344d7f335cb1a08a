/** What the clinic reads of the catalogue. The words for the patient are tested where they stand. */
import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { families } from '#core/exercises/families.ts';

const everything = [
  ...exerciseCautions.map((caution) => caution.text),
  ...exercises.flatMap(({ title, position, equipment }) => [title, position, ...equipment]),
  ...families.flatMap(({ title, about }) => [title, about]),
];

describe('Every text of the catalogue', () => {
  it('reassures nobody', () => {
    expect(everything.filter((text) => /\b(safe|safely|harmless|no risk|guarantee)/i.test(text))).toEqual([]);
  });

  it('names no maker and no colour of a band', () => {
    const marks = /[®™©]|\b(red|green|blue|yellow|black|silver|gold)\b/i;
    expect(everything.filter((text) => marks.test(text))).toEqual([]);
  });

  it('calls things by common words: no capital inside a sentence', () => {
    const capitals = everything
      .flatMap((text) => (text.match(/[^.?!]+/g) ?? [text]).map((sentence) => sentence.trim()))
      .filter((sentence) => /\s[A-Z]\p{Ll}/u.test(sentence));
    expect(capitals).toEqual([]);
  });
});

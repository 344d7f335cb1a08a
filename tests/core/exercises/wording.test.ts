import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseCautions } from '#core/exercises/cautions.ts';
import { families } from '#core/exercises/families.ts';

const sentencesOf = (text: string): readonly string[] => text.match(/[^.!?]+[.!?]+/g) ?? [];
const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}’-]+/gu) ?? [];
const instructions = exercises.flatMap((exercise) => exercise.instructions);
const patientTexts = [...instructions, ...exerciseCautions.map((caution) => caution.patientText)];
const everything = [
  ...patientTexts,
  ...exerciseCautions.map((caution) => caution.text),
  ...exercises.flatMap(({ title, position, equipment }) => [title, position, ...equipment]),
  ...families.flatMap(({ title, about }) => [title, about]),
];

describe('Instructions for the patient', () => {
  it('are there, two to six steps, each a whole sentence', () => {
    expect(exercises.filter(({ instructions: steps }) => steps.length < 2 || steps.length > 6)).toEqual([]);
    expect(instructions.filter((step) => !/^[A-Z].*\.$/.test(step))).toEqual([]);
  });

  it('come in sentences of at most 14 words', () => {
    const long = patientTexts.flatMap(sentencesOf).filter((sentence) => wordsOf(sentence).length > 14);
    expect(long).toEqual([]);
  });

  it('use short words: on average under five letters, none over 13 but the trade they address', () => {
    const words = patientTexts.flatMap(wordsOf);
    const letters = words.reduce((sum, word) => sum + word.length, 0);
    expect(letters / words.length).toBeLessThan(5);
    expect(words.filter((word) => word.length > 13 && word !== 'physiotherapist')).toEqual([]);
  });

  it('use no words of the trade', () => {
    const trade =
      /\b(flexion|extension|abduction|adduction|eccentric|concentric|prone|supine|dorsi|plantar|rung)/i;
    expect(patientTexts.filter((text) => trade.test(text))).toEqual([]);
  });

  it('end a lifting exercise with the way back', () => {
    const without = exercises.filter(
      ({ instructions: steps }) =>
        !steps.some((step) => /slowly|back|let go|change|again|down|the other/i.test(step)),
    );
    expect(without.map((exercise) => exercise.id)).toEqual([]);
  });
});

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

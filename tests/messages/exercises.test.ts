/** Every exercise has a name and its steps in every language. */
import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseIds } from '#core/exercises/ids.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName, exerciseSteps } from '#messages/exercises.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { asTyped } from '#messages/text.ts';

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}’-]+/gu) ?? [];
const everyTag = languages.map(({ tag }) => tag);

const mostWords: Readonly<Record<LanguageTag, number>> = { en: 12, de: 10 };

describe('exercises', () => {
  it('are those of the catalogue, in its order', () => {
    expect(exerciseIds).toEqual(exercises.map(({ id }) => id));
  });

  it('have the same number of steps in every language, two to six', () => {
    const wrong = exerciseIds.filter((id) => {
      const counts = everyTag.map((tag) => everyLanguage[tag].sentences.exercises[id].steps.length);
      return new Set(counts).size > 1 || counts.some((count) => count < 2 || count > 6);
    });
    expect(wrong).toEqual([]);
  });

  it.each(everyTag)('have names in %s that tell them apart, of few words', (tag) => {
    const names = exerciseIds.map((id) => everyLanguage[tag].sentences.exercises[id].name);
    expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
    expect(names.filter((name) => name.split(/\s+/).length > mostWords[tag])).toEqual([]);
  });

  it.each(everyTag)('have steps in %s that are whole sentences', (tag) => {
    const steps = Object.values(everyLanguage[tag].sentences.exercises).flatMap((one) => one.steps);
    expect(steps.filter((step) => !/^\p{Lu}.*\.$/u.test(step))).toEqual([]);
  });

  it('use short English words, and sentences of at most 14', () => {
    const steps = Object.values(everyLanguage.en.sentences.exercises).flatMap((one) => one.steps);
    const words = steps.flatMap(wordsOf);
    expect(words.reduce((sum, word) => sum + word.length, 0) / words.length).toBeLessThan(5);
    const long = steps
      .flatMap((step) => step.match(/[^.!?]+[.!?]+/g) ?? [])
      .filter((one) => wordsOf(one).length > 14);
    expect(long).toEqual([]);
  });

  it('that have left the catalogue are named by their id and have no steps', () => {
    expect(exerciseName('gone-long-ago')).toEqual(asTyped('gone-long-ago'));
    expect(exerciseSteps('gone-long-ago')).toEqual([]);
  });
});

/** Every exercise has a name and its steps in every language. */
import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { exerciseCautionIds } from '#core/prescribing/cautions/ids.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { exerciseName, exerciseSteps } from '#messages/exercises.ts';
import { languages } from '#messages/languages.ts';
import { asTyped } from '#messages/text.ts';
import { spokenIn } from './spoken.ts';

const exerciseIds = exercises.map(({ id }) => id);
const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}’-]+/gu) ?? [];
const everyTag = languages.map(({ tag }) => tag);

describe('exercises', () => {
  it('are those of the catalogue, in its order', () => {
    // Its keys are the ids the catalogue is typed by, no more and no fewer.
    const told = Object.keys(everyLanguage.en.sentences.exercises);
    expect(told).toEqual(exercises.map(({ id }) => id));
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
    expect(names.filter((name) => name.split(/\s+/).length > spokenIn[tag].mostWordsOfName)).toEqual([]);
  });

  it.each(everyTag)('have steps in %s that are whole sentences', (tag) => {
    const steps = Object.values(everyLanguage[tag].sentences.exercises).flatMap((one) => one.steps);
    expect(steps.filter((step) => !/^\p{Lu}.*\.$/u.test(step))).toEqual([]);
  });

  it('that have left the catalogue are named by their id and have no steps', () => {
    expect(exerciseName('gone-long-ago')).toEqual(asTyped('gone-long-ago'));
    expect(exerciseSteps('gone-long-ago')).toEqual([]);
  });
});

describe('exercises and their cautions in English', () => {
  const { exercises: told, cautions } = everyLanguage.en.sentences;
  const names = Object.values(told).map(({ name }) => name);
  const texts = [
    ...Object.values(told).flatMap(({ steps }) => steps),
    ...exerciseCautionIds.map((id) => cautions[id] as string),
  ];

  it('come in sentences of at most 14 words', () => {
    const sentences = texts.flatMap((text) => text.match(/[^.!?]+[.!?]+/g) ?? []);
    expect(sentences.filter((one) => wordsOf(one).length > 14)).toEqual([]);
  });

  it('use short words: on average under five letters, none over 13 but the trade they address', () => {
    const words = texts.flatMap(wordsOf);
    expect(words.reduce((sum, word) => sum + word.length, 0) / words.length).toBeLessThan(5);
    expect(words.filter((word) => word.length > 13 && word !== 'physiotherapist')).toEqual([]);
  });

  it('name no maker and no colour of a band', () => {
    const marks = /[®™©]|\b(red|green|blue|yellow|black|silver|gold)\b/i;
    expect([...names, ...texts].filter((text) => marks.test(text))).toEqual([]);
  });

  it('call things by common words: no capital inside a sentence', () => {
    const capitals = [...names, ...texts]
      .flatMap((text) => (text.match(/[^.?!]+/g) ?? [text]).map((sentence) => sentence.trim()))
      .filter((sentence) => /\s[A-Z]\p{Ll}/u.test(sentence));
    expect(capitals).toEqual([]);
  });

  it('end a lifting exercise with the way back', () => {
    const without = Object.entries(told).filter(
      ([, { steps }]) => !steps.some((step) => /slowly|back|let go|change|again|down|the other/i.test(step)),
    );
    expect(without.map(([id]) => id)).toEqual([]);
  });
});

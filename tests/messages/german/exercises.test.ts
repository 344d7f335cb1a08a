/** Every exercise in German: what the catalogue says, enumerated from the catalogue. */
import { describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { figuresOf, isCountedAlike, longParts, says, sentencesOf } from '../german-sentences.ts';

const texts = [...new Set(exercises.flatMap(({ title, instructions }) => [title, ...instructions]))];
const german = sentencesOf('exercises');
const pairs = Object.entries(german);

describe('an exercise in German', () => {
  it('has its title and every step said in German', () => {
    expect(texts.length).toBeGreaterThan(250);
    expect(texts.filter((text) => translateToGerman(text) === text)).toEqual([]);
  });

  it('is told apart from every other by its title', () => {
    const titles = exercises.map(({ title }) => translateToGerman(title));
    expect(titles.filter((title, place) => titles.indexOf(title) !== place)).toEqual([]);
  });

  it('has no sentence left whose English is gone', () => {
    expect(
      pairs.flatMap(([english]) => (texts.some((text) => says(english, text)) ? [] : [english])),
    ).toEqual([]);
  });

  it('has the same figures and units, and counts to the same number', () => {
    const differing = pairs.filter(
      ([english, told]) =>
        JSON.stringify(figuresOf(english)) !== JSON.stringify(figuresOf(told)) ||
        !isCountedAlike(english, told),
    );
    expect(differing).toEqual([]);
  });

  it('forbids what the English forbids, and breathes where it breathes', () => {
    const differing = pairs.filter(
      ([english, told]) =>
        /\b(do not|cannot)\b/i.test(english) !== /\bnicht\b/i.test(told) ||
        /keep breathing/i.test(english) !== /Atmen Sie weiter/.test(told) ||
        /\bslowly\b/i.test(english) !== /langsam(?!( bis))/i.test(told),
    );
    expect(differing).toEqual([]);
  });

  it('keeps the other side the other side', () => {
    const differing = pairs.filter(
      ([english, told]) => /\b(other|opposite)\b/i.test(english) !== /\bandere[nrs]?\b/i.test(told),
    );
    expect(differing).toEqual([]);
  });

  it('has no sentence over 20 words and no title over 10', () => {
    expect(pairs.flatMap(([, told]) => longParts(told))).toEqual([]);
    const titles = exercises.map(({ title }) => translateToGerman(title));
    expect(titles.filter((title) => title.split(/\s+/).length > 10)).toEqual([]);
  });
});

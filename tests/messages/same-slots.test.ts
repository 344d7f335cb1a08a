/** What a sentence names is the same in every language: its keys, its values, its figures. */
import { describe, expect, it } from 'vitest';
import { joints } from '#core/exercises/joints.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { type LanguageTag, languages } from '#messages/languages.ts';
import { everyRow } from '#messages/sentence-rows.ts';
import { translate } from '#messages/translate.ts';
import { type Count, counts } from './acts.ts';
import { figuresOf, otherTags, pairs, pairsWith } from './pairs.ts';
import { spokenIn } from './spoken.ts';

const slotPattern = /\{([a-z-]+)(?::([a-z-]+))?\}/g;

/** Names of the values of each sentence, that of its cases included. */
const slotsOf = (tag: LanguageTag): ReadonlyMap<string, string> => {
  const found = new Map<string, Set<string>>();
  for (const { area, key, text, sentence } of everyRow(everyLanguage[tag])) {
    const names = found.get(`${area} ${key}`) ?? new Set<string>();
    for (const [, name = ''] of text.matchAll(slotPattern)) names.add(name);
    if (typeof sentence !== 'string') names.add(sentence.by);
    found.set(`${area} ${key}`, names);
  }
  return new Map([...found].map(([key, names]) => [key, [...names].sort().join()]));
};

const everyTag = languages.map(({ tag }) => tag);

describe('in every language', () => {
  it('English stands beside another one', () => {
    expect(otherTags.length).toBeGreaterThan(0);
    expect(pairs.length).toBeGreaterThan(600 * otherTags.length);
  });

  it.each(otherTags)('%s has the keys and the slots of English', (tag) => {
    expect(slotsOf(tag)).toEqual(slotsOf('en'));
  });

  it.each(everyTag)('%s has no brace that is not a slot', (tag) => {
    const rows = everyRow(everyLanguage[tag]);
    expect(rows.filter(({ text }) => /[{}]/.test(text.replace(slotPattern, '')))).toEqual([]);
  });

  it.each(everyTag)('%s knows every form that its sentences ask for', (tag) => {
    const language = everyLanguage[tag];
    const asked = everyRow(language).flatMap(({ text }) =>
      [...text.matchAll(slotPattern)].flatMap(([slot, name = '', form]) => (form ? [{ slot, name }] : [])),
    );
    const samples: Readonly<Record<string, readonly string[]>> = { joint: joints };
    // A form that changes nothing for any value is one that the language does not know.
    const unknown = asked.filter(({ slot, name }) =>
      (samples[name] ?? []).every(
        (value) =>
          translate(slot, { [name]: value }, language) ===
          translate(`{${name}}`, { [name]: value }, language),
      ),
    );
    expect(unknown).toEqual([]);
  });

  it('figures and units are the same', () => {
    const differing = pairs.filter(
      ({ english, told }) => JSON.stringify(figuresOf(english)) !== JSON.stringify(figuresOf(told)),
    );
    expect(differing).toEqual([]);
  });

  it.each(otherTags)('%s counts to the same number', (tag) => {
    const words = Object.entries(counts) as [Count, RegExp][];
    const differing = pairsWith(tag).filter(({ english, told }) =>
      words.some(([count, word]) => word.test(english) && !spokenIn[tag].counts![count].test(told)),
    );
    expect(differing).toEqual([]);
  });

  it('no sentence of more than ten letters was left in English', () => {
    const letters = (text: string) => text.replace(/\{[^}]*\}|[^\p{L}]/gu, '').length;
    expect(pairs.filter(({ english, told }) => english === told && letters(english) > 10)).toEqual([]);
  });
});

/** Texts found by what is typed. */
import { describe, expect, it } from 'vitest';
import { hasWords } from '#core/word-search.ts';

const same = { schmerz: ['pain'], grenze: ['limit'], bfr: ['occlusion'], tage: ['days'] };
const finds = (typed: string, text: string) => hasWords(text, typed, same);

describe('a search by words', () => {
  it('finds a text by the beginning of each word, in any order, without accents and hyphens', () => {
    expect(finds('chair sit', 'Sit-to-stand, chair')).toBe(true);
    expect(finds('sit ladder', 'Sit-to-stand, chair')).toBe(false);
    expect(finds('hair', 'Sit-to-stand, chair')).toBe(false);
  });

  it('finds a text by a word of the same meaning, begun or inside a longer one', () => {
    expect(finds('Schmerz', 'Acceptable pain limit')).toBe(true);
    expect(finds('schmer', 'Acceptable pain limit')).toBe(true);
    expect(finds('Schmerzgrenze', 'Acceptable pain limit')).toBe(true);
    expect(finds('BFR', 'Occlusion pressure')).toBe(true);
  });

  it('asks for every part of a longer word', () => {
    expect(finds('Schmerzgrenze', 'Pain in the morning')).toBe(false);
    expect(finds('Schmerztage', 'Pain in the morning')).toBe(false);
  });

  it('finds everything by nothing, and nothing by a word that says nothing here', () => {
    expect(finds('  ', 'Anything')).toBe(true);
    expect(finds('constructor', 'Anything')).toBe(false);
  });
});

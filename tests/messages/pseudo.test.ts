/** A language made by machine fits where a written one does. */
import { describe, expect, it } from 'vitest';
import { everyLanguage } from '#messages/every-language.ts';
import { everyRow } from '#messages/sentence-rows.ts';
import { translate } from '#messages/translate.ts';
import { pseudo, pseudoOf } from './pseudo.ts';

const { en } = everyLanguage;
const made = { ...pseudoOf(en), locale: en.locale };

describe('a pseudo-language', () => {
  it('has every sentence of English, each marked at both ends and longer', () => {
    const [english, rows] = [everyRow(en), everyRow(made)];
    expect(rows.map(({ area, key, of }) => [area, key, of])).toEqual(
      english.map(({ area, key, of }) => [area, key, of]),
    );
    expect(rows.filter(({ text }) => !/^⟦.*⟧$/u.test(text))).toEqual([]);
    expect(rows.every(({ text }, place) => text.length > english[place]!.text.length)).toBe(true);
  });

  it('keeps its slots and its cases, and is filled in', () => {
    expect(pseudo('Sit {joint:your} on {name}.')).toMatch(/^⟦Sït \{joint:your\} öñ \{name\}\. ·+⟧$/);
    expect(translate(made.sentences.limits.range, { joint: 'left-knee', author: 'Ines' }, made)).toMatch(
      /left knee.*Ines/,
    );
    expect(translate(made.sentences.refusals['wrong-pin'], { left: 1 }, made)).toMatch(/1 trý lêft/);
  });
});

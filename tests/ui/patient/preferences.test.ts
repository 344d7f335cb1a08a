/** Language, direction and units of the patient's pages. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { pages as german } from '#messages/de/pages.ts';
import { allFiles } from '#tests/architecture/repository.ts';
import { everyWord } from '#ui/language/every-word.ts';
import { jointText } from '#ui/language/joint-text.ts';
import { dayText, lengthText, setDayLocale, weekdayText } from '#ui/language/text-of-time.ts';
import { kilogramsOf, weighIn, weightFigure, weightText } from '#ui/language/weight-text.ts';
import { setLanguage, t } from '#ui/language/words.ts';
import { flagOptions } from '#ui/patient/questions/flag-list.ts';

afterEach(() => {
  weighIn('kg');
  setLanguage({});
  setDayLocale('en-GB');
});

const english: Readonly<Record<string, string>> = everyWord;
const translated: Readonly<Record<string, string>> = german;
const braces = (text: string) => (text.match(/\{[a-z-]+\}/g) ?? []).sort();

describe('the second language', () => {
  it('has every sentence of the patient’s pages and none besides', () => {
    expect(Object.keys(translated).sort()).toEqual(Object.keys(english).sort());
  });

  it('names the same things in each sentence', () => {
    const differing = Object.keys(english).filter(
      (key) => JSON.stringify(braces(english[key]!)) !== JSON.stringify(braces(translated[key]!)),
    );
    expect(differing).toEqual([]);
  });

  it('leaves no longer sentence in English', () => {
    const same = Object.keys(english).filter(
      (key) =>
        english[key] === translated[key] && (english[key]?.replace(/\{[a-z-]+\}/g, '').length ?? 0) > 10,
    );
    expect(same).toEqual([]);
  });

  it('reassures no more than the first: no word for safe', () => {
    expect(
      Object.values(german).filter((text) => /\bsicherheit|\bgefahrlos|\bunbedenklich/i.test(text)),
    ).toEqual([]);
  });

  it('speaks from then on, days and joints included', () => {
    setLanguage(german);
    setDayLocale('de-DE');
    expect(t('ask.yes')).toBe('Ja');
    expect(jointText('left-knee')).toBe('Knie links');
    expect(dayText('2026-03-09')).toBe('Montag, 9. März');
    expect(lengthText(390)).toBe('6\u00a0Minuten 30\u00a0Sekunden');
    expect(weekdayText(1)).toBe('Montag');
    expect(weightText(4.5)).toBe('4,5\u00a0kg');
  });

  it('reaches the warning signs, though their list was read before the language was known', () => {
    setLanguage(german);
    expect(flagOptions().map(({ label }) => label)).toEqual(
      redFlags.map((flag) => translated[`flag.${flag}`]),
    );
  });
});

describe('weights', () => {
  it('are shown as stored in kilograms unless pounds were chosen', () => {
    expect(weightText(2.5)).toBe('2.5 kg');
    weighIn('lb');
    expect(weightText(4.5359237)).toBe('10 lb');
    expect(weightText(4)).toBe('8.82 lb');
  });

  it('typed in pounds are stored in kilograms to the last digit', () => {
    weighIn('lb');
    // The international pound is 0.45359237 kg by definition (1959).
    expect(kilogramsOf(10)).toBe(4.5359237);
    expect(kilogramsOf(1)).toBe(0.45359237);
  });

  it('typed in pounds come back as they were typed', () => {
    weighIn('lb');
    for (let typed = 0; typed <= 200; typed += 0.25)
      expect(Number(weightFigure(kilogramsOf(typed)))).toBe(typed);
  });
});

describe('a page read from right to left', () => {
  it('finds no style that names left or right', () => {
    const physical = /(?:^|[\s;{-])(?:left|right)\s*:|:\s*(?:left|right)\s*;/m;
    const found = allFiles()
      .filter((file) => /^src\/ui\/(?:patient|shared)\/.*\.css$/.test(file))
      .filter((file) => physical.test(readFileSync(file, 'utf8')));
    expect(found).toEqual([]);
  });

  it('finds no list of four edges whose left differs from its right', () => {
    const four = /(?:padding|margin|inset|border-width): (\S+) (\S+) (\S+) (\S+);/g;
    const found = allFiles()
      .filter((file) => /^src\/ui\/(?:patient|shared)\/.*\.css$/.test(file))
      .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(four)])
      .filter(([, , right, , left]) => right !== left)
      .map(([text]) => text);
    expect(found).toEqual([]);
  });
});

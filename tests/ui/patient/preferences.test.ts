/** Language, direction and units of the patient's pages. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { words as german } from '#messages/de/pages/warning-signs.ts';
import { allFiles } from '#tests/architecture/repository.ts';
import { speak } from '#ui/language/speak.ts';
import { dayText, lengthText, weekdayText } from '#ui/language/text-of-time.ts';
import { kilogramsOf, weighIn, weightFigure, weightText } from '#ui/language/weight-text.ts';
import { provide, setLanguage, t } from '#ui/language/words.ts';
import { chosenFrom, cookieNames, languagesAsked } from '#ui/patient/preferences/chosen.ts';
import { flagOptions } from '#ui/patient/questions/flag-list.ts';
import '#ui/patient/words.ts';

afterEach(() => {
  weighIn('kg');
  setLanguage();
});

describe('the second language', () => {
  it('speaks from then on, days and joints included', async () => {
    expect(await speak('de')).toBe('de');
    expect(t('ask.yes')).toBe('Ja');
    expect(t('joint.name', { joint: 'left-knee' })).toBe('Knie links');
    expect(dayText('2026-03-09')).toBe('Montag, 9. März');
    expect(lengthText(390)).toBe('6\u00a0Minuten 30\u00a0Sekunden');
    expect(weekdayText(1)).toBe('Montag');
    expect(weightText(4.5)).toBe('4,5\u00a0kg');
  });

  it('reaches the warning signs, though their list was read before the language was known', async () => {
    await speak('de');
    expect(flagOptions(true).map(({ label }) => label)).toEqual(
      redFlags.map((flag) => german[`flag.${flag}`]),
    );
  });
});

describe('a language that cannot be had whole', () => {
  it('leaves the whole page in English', async () => {
    let isLost = true;
    provide({}, () => (isLost ? Promise.reject(new Error('no signal')) : Promise.resolve({ words: {} })));
    expect(await speak('de')).toBe('en');
    expect(t('ask.yes')).toBe('Yes');
    expect(dayText('2026-03-09')).toBe('Monday 9 March');
    isLost = false;
    expect(await speak('de')).toBe('de');
  });
});

describe('the language a page starts in', () => {
  const none = () => undefined;
  const inLanguage = (...asked: readonly string[]) => chosenFrom(none, asked).language;

  it('is the first the browser asks for that there is, whatever its region', () => {
    expect(inLanguage('de-AT', 'en')).toBe('de');
    expect(inLanguage('DE')).toBe('de');
    expect(inLanguage('en-IE', 'de')).toBe('en');
    expect(inLanguage('fr-FR', 'de-CH', 'en')).toBe('de');
    expect(inLanguage('fr')).toBe('en');
    expect(inLanguage()).toBe('en');
  });

  it('is what was chosen, once something was', () => {
    const read = (name: string) => (name === cookieNames.language ? 'en' : undefined);
    expect(chosenFrom(read, ['de']).language).toBe('en');
  });

  // RFC 9110: 12.5.4 for the field, 12.4.2 for its weights; one of weight 0 is not wanted.
  it('reads the wish of a browser by its weights', () => {
    expect(languagesAsked('da, en-gb;q=0.8, en;q=0.7')).toEqual(['da', 'en-gb', 'en']);
    expect(languagesAsked('en;q=0.5, de-DE, fr;q=0')).toEqual(['de-DE', 'en']);
    expect(languagesAsked('')).toEqual([]);
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
      .filter((file) => /^src\/ui\/(?:patient|design-system|language)\/.*\.css$/.test(file))
      .filter((file) => physical.test(readFileSync(file, 'utf8')));
    expect(found).toEqual([]);
  });

  it('finds no list of four edges whose left differs from its right', () => {
    const four = /(?:padding|margin|inset|border-width): (\S+) (\S+) (\S+) (\S+);/g;
    const found = allFiles()
      .filter((file) => /^src\/ui\/(?:patient|design-system|language)\/.*\.css$/.test(file))
      .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(four)])
      .filter(([, , right, , left]) => right !== left)
      .map(([text]) => text);
    expect(found).toEqual([]);
  });
});

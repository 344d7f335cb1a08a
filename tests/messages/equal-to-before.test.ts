/** The keyed sentences say to the letter what the core says in English and what was told for it in German. */
import { describe, expect, it } from 'vitest';
import { joints } from '#core/exercises/joints.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { everyLanguage, textOf } from '#messages/every-language.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import type { Text } from '#messages/text.ts';
import { translate } from '#messages/translate.ts';
import { translateToGerman } from '#ui/language/bridge/german.ts';
import { sentenceFiles } from '#ui/language/bridge/sentences.ts';
import { readySentences } from '#ui/language/ready.ts';

const asBefore = (english: string): Text => ({ en: english, de: translateToGerman(english) });

const { en, de } = everyLanguage;

describe('as before', () => {
  it('ready sentences', () => {
    for (const one of readySentences) {
      expect(textOf('ready', one.key as 'stay')).toEqual({ en: one.en, de: one.de });
    }
  });

  /** English and German of an area, slots without their forms. */
  const pairsOf = (area: string): readonly (readonly [string, string])[] => {
    const german = sentenceRows(de).filter((row) => row.area === area);
    const plain = (text: string) => text.replace(/\{([a-z-]+):[a-z-]+\}/g, '{$1}');
    return sentenceRows(en)
      .filter((row) => row.area === area)
      .map(({ text }, place) => [plain(text), plain(german[place]!.text)]);
  };

  it.each(['refusals', 'self-management'] as const)('%s, nothing more and nothing less', (area) => {
    const plain = (text: string) => text.replace(/\{[#=]/g, '{');
    const told = Object.entries(sentenceFiles[area])
      .filter(([english]) => !english.includes('{#day}'))
      .map(([english, german]) => [plain(english), plain(german)]);
    expect([...pairsOf(area)].sort()).toEqual(told.sort());
  });

  it('days and joints as they stand in the record', () => {
    for (let month = 1; month <= 12; month += 1) {
      const day = `2025-${String(month).padStart(2, '0')}-09`;
      const text = asBefore(dayInWords(day));
      expect({ en: translate('{day}', { day }, en), de: translate('{day}', { day }, de) }).toEqual(text);
    }
    for (const joint of joints) {
      const { en: english, de: german } = asBefore(jointInWords(joint));
      expect(translate('x {joint:label}', { joint }, en)).toBe(`x ${english}`);
      expect(translate('x {joint:label}', { joint }, de)).toBe(`x ${german}`);
    }
  });
});

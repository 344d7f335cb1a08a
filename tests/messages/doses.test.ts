/** A dose says what is counted, and a list is said with its "and". */
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { type DoseSpeech, doseTitle } from '#messages/doses.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { listed } from '#messages/formats.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { translate, type Values } from '#messages/translate.ts';

const speechIn = (tag: LanguageTag): DoseSpeech => {
  const language = everyLanguage[tag];
  return {
    say: (key, ...[values]) => translate(language.pages[key], (values ?? {}) as Values, language),
    weight: String,
    list: (parts) => listed(parts, language.locale),
  };
};
const told = (dose: object) =>
  (['en', 'de'] as const).map((tag) => doseTitle(dose as unknown as Dose, speechIn(tag)));
const counted = (sets: number, low: number, high: number) =>
  told({ method: 'low-load', sets, repetitions: { low, high } });
const withCuff = (...scheme: readonly number[]) => told({ method: 'occlusion', sets: scheme.length, scheme });

describe('a dose', () => {
  it.each([
    [counted(3, 10, 15), '3 sets of 10 to 15 repetitions', '3 Sätze mit je 10 bis 15 Wiederholungen'],
    [counted(4, 25, 25), '4 sets of 25 repetitions', '4 Sätze mit je 25 Wiederholungen'],
    [counted(1, 8, 8), '1 set of 8 repetitions', '1 Satz mit 8 Wiederholungen'],
    [counted(2, 1, 1), '2 sets of 1 repetition', '2 Sätze mit je 1 Wiederholung'],
    [withCuff(30, 15, 15), '3 sets: 30, 15 and 15 repetitions', '3 Sätze: 30, 15 und 15 Wiederholungen'],
    [withCuff(15, 15), '2 sets of 15 repetitions', '2 Sätze mit je 15 Wiederholungen'],
    [withCuff(30), '1 set of 30 repetitions', '1 Satz mit 30 Wiederholungen'],
  ])('%j', (titles, en, de) => expect(titles).toEqual([en, de]));
});

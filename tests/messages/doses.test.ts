/** A dose says what is counted, and a list is said with its "and". */
import { describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { type DoseSpeech, doseInHand, doseTitle, loadText } from '#messages/doses.ts';
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
const held = (sets: number, low: number, high: number, seconds: number) =>
  told({ method: 'variation', sets, repetitions: { low, high }, hold: { seconds, mostSeconds: 10 } });
const withCuff = (...scheme: readonly number[]) => told({ method: 'occlusion', sets: scheme.length, scheme });

describe('a dose', () => {
  it.each([
    [counted(3, 10, 15), '3 sets of 10 to 15 repetitions', '3 Sätze mit je 10 bis 15 Wiederholungen'],
    [counted(4, 25, 25), '4 sets of 25 repetitions', '4 Sätze mit je 25 Wiederholungen'],
    [counted(1, 8, 8), '1 set of 8 repetitions', '1 Satz mit 8 Wiederholungen'],
    [counted(2, 1, 1), '2 sets of 1 repetition', '2 Sätze mit je 1 Wiederholung'],
    [
      held(2, 5, 10, 5),
      '2 sets of 5 to 10 holds of 5 seconds',
      '2 Sätze: je 5- bis 10-mal 5\u00a0Sekunden halten',
    ],
    [held(1, 1, 1, 7), '1 set of 1 hold of 7 seconds', '1 Satz: einmal 7\u00a0Sekunden halten'],
    [withCuff(30, 15, 15), '3 sets: 30, 15 and 15 repetitions', '3 Sätze: 30, 15 und 15 Wiederholungen'],
    [withCuff(15, 15), '2 sets of 15 repetitions', '2 Sätze mit je 15 Wiederholungen'],
    [withCuff(30), '1 set of 30 repetitions', '1 Satz mit 30 Wiederholungen'],
  ])('%j', (titles, en, de) => expect(titles).toEqual([en, de]));

  it('says the machine of the clinic wherever it is told with what, and nothing of a place at home', () => {
    const of = (machine: object) =>
      ({ method: 'low-load', loadKg: 30, side: 'both', ...machine }) as unknown as Dose;
    const on = of({ machine: { id: 'm', name: 'Leg press' } });
    expect(doseInHand(on, speechIn('en'))).toEqual(['with 30', 'at the clinic: Leg press']);
    expect(doseInHand(on, speechIn('de'))).toEqual(['mit 30', 'in der Praxis: Leg press']);
    expect(doseInHand(of({}), speechIn('en'))).toEqual(['with 30']);
  });

  it('names the piece of putty or the ring by its mark, wherever a weight would be named', () => {
    const of = (mark: object) =>
      ({ method: 'variation', addedKg: 0, side: 'both', ...mark }) as unknown as Dose;
    const both = (told: (speech: DoseSpeech) => unknown) => [told(speechIn('en')), told(speechIn('de'))];
    expect(both((speech) => loadText(of({ mark: 2 }), speech))).toEqual([
      'putty or ring marked 2',
      'Knete oder Ring mit der Nummer 2',
    ]);
    expect(both((speech) => loadText(of({}), speech))).toEqual(['no weight', 'ohne Gewicht']);
    expect(both((speech) => doseInHand(of({ mark: 2 }), speech).length)).toEqual([1, 1]);
    expect(both((speech) => doseInHand(of({}), speech).length)).toEqual([0, 0]);
  });
});

/** Sentences of the core in another language: found by their English, figures kept, own words left alone. */
import { describe, expect, it } from 'vitest';
import { translatorOf } from '#ui/language/bridge/translator.ts';

const translate = translatorOf(
  {
    'Rest today.': 'Heute ruhen.',
    'left knee': 'Knie links',
    'your heart': 'Ihr Herz',
    'your bones': 'Ihre Knochen',
    'Pain in the {joint} was {#score} of 10.': 'Schmerz ({joint}): {#score} von 10.',
    'Pain in the {joint} was {#score} of 10, and more.': 'Schmerz ({joint}): {#score} von 10, und mehr.',
    'Take {#kg} kg (was {#before} kg)?': 'Erst {#before} kg, jetzt {#kg} kg?',
    'Nobody has checked: {things}.': 'Niemand hat geprüft: {things}.',
    '{=title}: {=changes}.': '{=title}: {=changes}.',
    '{=new} instead of {=old}': '{=new} statt {=old}',
    '{#new} repetitions instead of {#old}': '{#new} statt {#old} Wiederholungen',
    'Signed by {name}.': 'Unterschrieben: {name}.',
  },
  ',',
);

describe('a sentence of the core', () => {
  it('is told as it stands in the dictionary', () => {
    expect(translate('Rest today.')).toBe('Heute ruhen.');
  });

  it('keeps its values, wherever the other language puts them', () => {
    expect(translate('Pain in the left knee was 4 of 10.')).toBe('Schmerz (Knie links): 4 von 10.');
    expect(translate('Pain in the left knee was 4 of 10, and more.')).toBe(
      'Schmerz (Knie links): 4 von 10, und mehr.',
    );
  });

  it('writes the decimals of a figure as the other language does', () => {
    expect(translate('Take 2.5 kg (was 12 kg)?')).toBe('Erst 12 kg, jetzt 2,5 kg?');
  });

  it('takes no word for a figure', () => {
    expect(translate('Pain in the left knee was some of 10.')).toBe('Pain in the left knee was some of 10.');
  });

  it('tells a list one by one', () => {
    expect(translate('Nobody has checked: your heart; your bones.')).toBe(
      'Niemand hat geprüft: Ihr Herz; Ihre Knochen.',
    );
  });

  it('is told one by one where several stand together, and stays where one of them is unknown', () => {
    expect(translate('Rest today. Pain in the left knee was 2.5 of 10.')).toBe(
      'Heute ruhen. Schmerz (Knie links): 2,5 von 10.',
    );
    expect(translate('Rest today. Bring your shoes.')).toBe('Rest today. Bring your shoes.');
  });

  it('takes a span and a row of counts for a figure', () => {
    expect(translate('left knee: 8–10.5 repetitions instead of 30, 15, 15.')).toBe(
      'Knie links: 8–10,5 statt 30, 15, 15 Wiederholungen.',
    );
  });

  it('stays whole in English where a value that has to be known is not', () => {
    expect(translate('left knee: your heart instead of your bones; 8 repetitions instead of 9.')).toBe(
      'Knie links: Ihr Herz statt Ihre Knochen; 8 statt 9 Wiederholungen.',
    );
    for (const own of ['left knee: your heart instead of mine.', 'My knee: 8 repetitions instead of 9.'])
      expect(translate(own)).toBe(own);
  });

  it('keeps a name that nobody translates', () => {
    expect(translate('Signed by Ana Lima.')).toBe('Unterschrieben: Ana Lima.');
  });

  it('that nobody translated stays as it was written', () => {
    expect(translate('Ring me on Friday, Ana.')).toBe('Ring me on Friday, Ana.');
  });
});

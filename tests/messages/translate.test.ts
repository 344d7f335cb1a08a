/** A sentence is filled in as the language writes it. */
import { describe, expect, it } from 'vitest';
import { joints } from '#core/exercises/joints.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { everyLanguage, textOf } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { asTyped, joined } from '#messages/text.ts';
import { translate } from '#messages/translate.ts';

const { en, de } = everyLanguage;

describe('a sentence', () => {
  it('without slots stays as it is', () => {
    expect(translate('Sit tall.', {}, en)).toBe('Sit tall.');
  });

  it('takes each value where it belongs, as often as it is named', () => {
    expect(translate('{a} then {b}, then {a}', { a: 'left', b: 'right' }, en)).toBe(
      'left then right, then left',
    );
  });

  it('keeps a slot visible that was given no value', () => {
    expect(translate('Hello {name}', {}, en)).toBe('Hello {name}');
  });

  it('takes what a person typed for text, braces and signs of a pattern included', () => {
    expect(translate('{name}, {phone}', { name: '{phone} $& $1', phone: '7' }, en)).toBe('{phone} $& $1, 7');
    expect(translate('{name} rang.', { name: 'de Vries' }, en)).toBe('de Vries rang.');
  });

  it('writes a number with the mark of the language, all of it, and no mark between thousands', () => {
    expect(translate('{kg} kg', { kg: 2.5 }, en)).toBe('2.5 kg');
    expect(translate('{kg} kg', { kg: 2.5 }, de)).toBe('2,5 kg');
    expect(translate('{kg} kg', { kg: 1.133981 }, de)).toBe('1,133981 kg');
    expect(translate('{count}', { count: 12_000 }, de)).toBe('12000');
    expect(translate('{count}', { count: 0 }, de)).toBe('0');
  });
});

describe('a sentence with cases', () => {
  const sets = { by: 'sets', one: '1 set', other: '{sets} sets' } as const;
  const gaveWay = {
    by: 'joint',
    knee: 'Ist {joint:your} weggeknickt?',
    hand: 'Hat {joint:your} plötzlich die Kraft verloren?',
    other: 'Hat {joint:your} nachgegeben?',
  } as const;

  it('is chosen by the plural of the language', () => {
    expect([0, 1, 2, 1.5].map((count) => translate(sets, { sets: count }, en))).toEqual([
      '0 sets',
      '1 set',
      '2 sets',
      '1.5 sets',
    ]);
  });

  it('is chosen by the joint, whichever side it is on', () => {
    expect(translate(gaveWay, { joint: 'right-knee' }, de)).toBe('Ist Ihr rechtes Knie weggeknickt?');
    expect(translate(gaveWay, { joint: 'left-hand' }, de)).toBe(
      'Hat Ihre linke Hand plötzlich die Kraft verloren?',
    );
    expect(translate(gaveWay, { joint: 'neck' }, de)).toBe('Hat Ihr Nacken nachgegeben?');
  });

  it('falls to the last where nothing fits or nothing was given', () => {
    expect(translate(sets, {}, en)).toBe('{sets} sets');
    expect(translate({ by: 'kind', other: 'so' }, { kind: 'else' }, en)).toBe('so');
  });
});

describe('a joint, a limb, a day', () => {
  it('is written in the form that the sentence asks for', () => {
    expect(translate('Schmerz {joint:in}', { joint: 'low-back' }, de)).toBe('Schmerz im unteren Rücken');
    expect(translate('your {joint} hurts', { joint: 'low-back' }, en)).toBe('your lower back hurts');
    expect(translate('Puls {limb:on}', { limb: 'left-arm' }, de)).toBe('Puls am linken Arm');
    expect(translate('on {day}', { day: '2025-02-03' }, en)).toBe('on 3 Feb 2025');
    expect(translate('am {day}', { day: '2025-02-03' }, de)).toBe('am 3. Februar 2025');
  });

  it('is in English what stands in the record', () => {
    for (const month of ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12']) {
      const day = `2025-${month}-09`;
      expect(translate('on {day}', { day }, en)).toBe(`on ${dayInWords(day)}`);
    }
    for (const joint of joints) {
      expect(translate('x {joint:label}', { joint }, en)).toBe(`x ${jointInWords(joint)}`);
    }
  });

  it('begins with a capital where a sentence does, and nowhere else', () => {
    expect(translate('{joint} und {joint}', { joint: 'left-knee' }, de)).toBe('Linkes Knie und linkes Knie');
    expect(translate('Ja. {joint} auch.', { joint: 'left-knee' }, en)).toBe('Ja. Left knee auch.');
    expect(translate('Was folgte: {joint}', { joint: 'left-knee' }, de)).toBe('Was folgte: linkes Knie');
  });
});

describe('a text', () => {
  it('has every language, each with its own marks and its own values', () => {
    const text = textOf('dose-changes', 'new-load', { from: 4, to: 2.5 });
    expect(Object.keys(text)).toEqual(languages.map(({ tag }) => tag));
    expect(text).toMatchObject({ en: '2.5 kg instead of 4 kg', de: '2,5 kg statt 4 kg' });
    expect(
      textOf('dose-changes', 'changed', { exercise: asTyped('x'), changes: joined([text, text], '; ') }),
    ).toMatchObject({
      en: 'x: 2.5 kg instead of 4 kg; 2.5 kg instead of 4 kg.',
      de: 'x: 2,5 kg statt 4 kg; 2,5 kg statt 4 kg.',
    });
  });

  it('of an id that no list has any more is the id', () => {
    expect(textOf('rules', 'gone' as 'P1')).toEqual(asTyped('gone'));
  });

  it('does not compile without its values, with others, or with a joint nobody has', () => {
    // @ts-expect-error a value is missing
    textOf('limits', 'range', { joint: 'left-knee' });
    // @ts-expect-error a value has another name
    textOf('limits', 'range', { joints: 'left-knee', author: 'A' });
    // @ts-expect-error no such joint
    textOf('limits', 'range', { joint: 'left-nose', author: 'A' });
    // @ts-expect-error no values at all
    expect(textOf('refusals', 'wrong-pin').en).toContain('{left}');
    // @ts-expect-error no such key
    textOf('rules', 'P99');
  });
});

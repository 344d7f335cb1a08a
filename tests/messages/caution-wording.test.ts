/** Each number of the caution wording stands for the same words for ever. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';
import { spokenIn } from './spoken.ts';

const areas = ['cautions', 'unchecked', 'limits'];

const digestOf = (tag: (typeof languages)[number]['tag']): string => {
  const lines = sentenceRows(everyLanguage[tag])
    .filter(({ area }) => areas.includes(area))
    .map(({ area, key, of, text }) => JSON.stringify([area, key, of, text]))
    .sort();
  return createHash('sha256').update(lines.join('\n')).digest('hex').slice(0, 16);
};

describe.each(languages)('the wording of cautions in $tag', ({ tag }) => {
  const digests = spokenIn[tag].cautionDigests;
  const numbers = Object.keys(digests).map(Number);

  it('has a number of its own for every change of its words', () => {
    expect(digests[cautionWording]).toBe(digestOf(tag));
  });

  it('has no number left out since the language was added, and none to come', () => {
    const first = numbers[0]!;
    expect(numbers).toEqual(numbers.map((_, place) => first + place));
    expect(numbers.at(-1)).toBe(cautionWording);
  });
});

it('the wording of cautions has a number only where the words of a language changed', () => {
  const all = languages.map(({ tag }) => spokenIn[tag].cautionDigests);
  const numbers = Object.keys(spokenIn.en.cautionDigests).map(Number);
  expect(numbers[0]).toBe(1);
  const rows = numbers.map((number) => all.map((digests) => digests[number] ?? '').join(' '));
  expect(new Set(rows).size).toBe(rows.length);
});

/** Each number of the caution wording stands for the same words for ever. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import { sentenceRows } from '#messages/sentence-rows.ts';

/** One row a number; a row is never changed, only added. Languages that came later are not in earlier rows. */
const digests: Readonly<Record<number, Readonly<Record<string, string>>>> = {
  1: { en: '9179270c5fc82982', de: '7b989f4fb38052e5' },
  2: { en: 'ebaab18419f23041', de: '88b951a9d2cf72d1' },
  3: { en: '080d38fd303359f1', de: '333f4822ab829e2a' },
};

const areas = ['cautions', 'unchecked', 'limits'];

const digestOf = (tag: (typeof languages)[number]['tag']): string => {
  const lines = sentenceRows(everyLanguage[tag])
    .filter(({ area }) => areas.includes(area))
    .map(({ area, key, of, text }) => JSON.stringify([area, key, of, text]))
    .sort();
  return createHash('sha256').update(lines.join('\n')).digest('hex').slice(0, 16);
};

describe('the wording of cautions', () => {
  it('has a number of its own for every change of its words, in each language', () => {
    const now = Object.fromEntries(languages.map(({ tag }) => [tag, digestOf(tag)]));
    expect(now).toEqual(digests[cautionWording]);
  });

  it('has no number twice, and none left out', () => {
    const numbers = Object.keys(digests).map(Number);
    expect(numbers).toEqual(numbers.map((_, place) => place + 1));
    expect(cautionWording).toBe(numbers.length);
    const rows = Object.values(digests).map((row) => JSON.stringify(row));
    expect(new Set(rows).size).toBe(rows.length);
  });
});

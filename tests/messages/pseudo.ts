/**
 * A language nobody speaks, made from English: accents, longer by half, and ⟦ ⟧ around each sentence, so
 * that what was never translated is seen at once. Slots and what people typed stay as they are.
 */
import type { Language } from '#messages/language.ts';
import type { Sentence } from '#messages/sentence.ts';

const accents: Readonly<Record<string, string>> = {
  a: 'á',
  c: 'ç',
  e: 'ê',
  i: 'ï',
  n: 'ñ',
  o: 'ö',
  s: 'š',
  u: 'ü',
  y: 'ý',
};

const accented = (text: string): string =>
  text
    .split(/(\{[^}]*\})/)
    .map((part) =>
      part.startsWith('{') ? part : part.replace(/[a-z]/g, (letter) => accents[letter] ?? letter),
    )
    .join('');

/** "Sit tall." → "⟦Šït tall. ·····⟧". */
export const pseudo = (text: string): string => {
  const letters = text.replace(/\{[^}]*\}/g, '').length;
  return `⟦${accented(text)} ${'·'.repeat(Math.ceil(letters / 2))}⟧`;
};

const sentence = (one: Sentence): Sentence =>
  typeof one === 'string'
    ? pseudo(one)
    : ({
        ...Object.fromEntries(
          Object.entries(one).map(([of, text]) => [of, of === 'by' ? text : pseudo(text)]),
        ),
        other: pseudo(one.other),
        by: one.by,
      } as Sentence);

const each = <Area extends object, Value>(area: Area, change: (value: Value) => Value): Area =>
  Object.fromEntries(Object.entries(area).map(([key, value]) => [key, change(value)])) as Area;

/** The words of one paper or place. */
export const pseudoWords = <Words extends Readonly<Record<string, Sentence>>>(words: Words): Words =>
  each(words, sentence);

/** The language of the folder, whole: its shape is all that a language costs. */
export const pseudoOf = ({ forms, pages, sentences: { exercises, ...areas } }: Language): Language => ({
  forms,
  pages: each(pages as Readonly<Record<string, Sentence>>, sentence) as Language['pages'],
  sentences: {
    ...each(areas, (area: Readonly<Record<string, Sentence>>) => each(area, sentence)),
    exercises: each(exercises, ({ name, steps }: (typeof exercises)[keyof typeof exercises]) => ({
      name: pseudo(name),
      steps: steps.map(pseudo),
    })),
  },
});

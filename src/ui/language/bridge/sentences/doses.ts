import { words as germanDose } from '#messages/de/pages/dose.ts';
import { words as germanSigns } from '#messages/de/pages/warning-signs.ts';
import { words as dose } from '#messages/en/pages/dose.ts';
import { words as signs } from '#messages/en/pages/warning-signs.ts';
import type { Sentence } from '#messages/sentence.ts';
import type { Sentences } from '../translator.ts';

/** Doses and warning signs that the server already put into words for a paper, from the words of the pages. */
const paired = <K extends string>(
  english: Readonly<Record<K, Sentence>>,
  german: Readonly<Record<K, Sentence>>,
): Sentences =>
  Object.fromEntries(
    (Object.keys(english) as K[]).flatMap((key) => {
      const told = textsOf(german[key]);
      return textsOf(english[key]).map((text, place) => [asPattern(text), asPattern(told[place] ?? '')]);
    }),
  );

const textsOf = (sentence: Sentence): readonly string[] =>
  typeof sentence === 'string' ? [sentence] : [sentence.one ?? sentence.other, sentence.other];

const asPattern = (text: string): string =>
  text.replace(/\{([a-z]+)\}/g, (_, name: string) => `{${name === 'weight' ? '=' : '#'}${name}}`);

export const doseSentences: Sentences = {
  ...paired(dose, germanDose),
  ...paired(signs, germanSigns),
  '{#weight} kg': '{#weight} kg',
  '{#weight} lb': '{#weight} lb',
  // A list of what is known above, ended as a sentence.
  '{=list}.': '{=list}.',
};

import { careGerman } from '#messages/de/pages/care.ts';
import { sessionGerman } from '#messages/de/pages/session.ts';
import { todayGerman } from '#messages/de/pages/today.ts';
import { careWords } from '#messages/en/pages/care.ts';
import { sessionWords } from '#messages/en/pages/session.ts';
import { todayWords } from '#messages/en/pages/today.ts';
import type { Sentences } from '../translator.ts';

/** Doses and warning signs that the server already put into words for a paper, from the words of the pages. */
const paired = <K extends string>(
  english: Readonly<Record<K, string>>,
  german: Readonly<Record<K, string>>,
  keys: readonly K[],
): Sentences => Object.fromEntries(keys.map((key) => [asPattern(english[key]), asPattern(german[key])]));

const asPattern = (text: string): string =>
  text.replace(/\{([a-z]+)\}/g, (_, name: string) => `{${name === 'weight' ? '=' : '#'}${name}}`);

const keysOf = <T extends object>(words: T, start: string): readonly (keyof T & string)[] =>
  (Object.keys(words) as (keyof T & string)[]).filter((key) => key.startsWith(start));

export const doseSentences: Sentences = {
  ...paired(todayWords, todayGerman, keysOf(todayWords, 'dose.')),
  ...paired(careWords, careGerman, keysOf(careWords, 'flag.')),
  ...paired(sessionWords, sessionGerman, ['cuff.supervised']),
  '{#weight} kg': '{#weight} kg',
  '{#weight} lb': '{#weight} lb',
  // A list of what is known above, ended as a sentence.
  '{=list}.': '{=list}.',
};

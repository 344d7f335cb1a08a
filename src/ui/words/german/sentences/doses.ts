import { careWords } from '../../care.ts';
import { sessionWords } from '../../session.ts';
import type { Sentences } from '../../telling.ts';
import { todayWords } from '../../today.ts';
import { careGerman } from '../care.ts';
import { sessionGerman } from '../session.ts';
import { todayGerman } from '../today.ts';

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

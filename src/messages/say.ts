/** Staff screens are English alone: the words of a place, said by key. What is typed stays as typed. */
import { languages } from './languages.ts';
import type { Args, Sentence } from './sentence.ts';
import { translate } from './translate.ts';

const grammar = { locale: languages[0].locale, forms: {} };

export const sayIn =
  <Words extends Readonly<Record<string, Sentence>>>(words: Words) =>
  <Key extends keyof Words & string>(key: Key, ...[values]: Args<Words[Key]>): string =>
    translate(words[key]!, values ?? {}, grammar);

/** Staff screens are English alone: the words of a place, said by key. What is typed stays as typed. */
import { forms } from './en/forms.ts';
import { languages } from './languages.ts';
import type { Args, Sentence } from './sentence.ts';
import { type Grammar, translate } from './translate.ts';

const { locale } = languages[0];

const sayAs =
  (grammar: Grammar) =>
  <Words extends Readonly<Record<string, Sentence>>>(words: Words) =>
  <Key extends keyof Words & string>(key: Key, ...[values]: Args<Words[Key]>): string =>
    translate(words[key]!, values ?? {}, grammar);

export const sayIn = sayAs({ locale, forms: {} });

/** The same in any language a patient is asked in. */
export const askWith = sayAs;

/** A sentence of the patient's pages, said on a staff screen as the patient reads it in English. */
export const askIn = sayAs({ locale, forms });

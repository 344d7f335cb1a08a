/** Fills a sentence in. Pure, and small enough for a phone. */
import { numberFormat, pluralRules } from './formats.ts';
import type { Sentence } from './sentence.ts';

/** Writes a value in a form of the language: ("left-knee", "your") → "Ihr linkes Knie". An empty form is the plain one. */
type Form = (value: string, form: string) => string;

export interface Grammar {
  /** BCP 47, such as "de-DE": plurals and the marks of a number. */
  readonly locale: string;
  /** By the name of the slot. */
  readonly forms: Readonly<Record<string, Form>>;
}

export type Values = Readonly<Record<string, string | number>>;

const slots = /\{([a-z-]+)(?::([a-z-]+))?\}/g;

/** The case of a sentence that fits its value; a joint is asked for by its name, whichever side it is on. */
const caseOf = (sentence: Sentence, values: Values, locale: string): string => {
  if (typeof sentence === 'string') return sentence;
  const value = values[sentence.by];
  const name =
    typeof value === 'number'
      ? pluralRules(locale, {}).select(value)
      : String(value).replace(/^(left|right)-/, '');
  return sentence[name] ?? sentence.other;
};

const figures = { maximumFractionDigits: 20, useGrouping: false } as const;

/** Rounding is the business of whoever gives the number; nothing of it is lost here. */
const written = (value: number, locale: string): string => numberFormat(locale, figures).format(value);

const isStart = (text: string, place: number): boolean =>
  place === 0 || /[.!?]\s$/.test(text.slice(0, place));

/** As a heading or a sentence begins. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * A sentence with its values. A value in a form of the language begins with a capital where the sentence
 * does; what people typed stays as typed. A slot without its value is a mistake of the caller and stays visible.
 */
export const translate = (sentence: Sentence, values: Values, { locale, forms }: Grammar): string => {
  const text = caseOf(sentence, values, locale);
  return text.replace(slots, (slot, name: string, form: string | undefined, place: number) => {
    const value = values[name];
    if (value === undefined) return slot;
    if (typeof value === 'number') return written(value, locale);
    const formed = forms[name]?.(value, form ?? '');
    if (formed === undefined) return value;
    return isStart(text, place) ? capitalised(formed) : formed;
  });
};

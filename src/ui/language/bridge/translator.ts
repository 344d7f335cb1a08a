/**
 * What the core says in English, told in another language. The core writes whole sentences, so they are
 * looked up by their English: first as they stand, then as a pattern, then sentence by sentence. What is
 * not known stays as it is: a clinician's own words are nobody's to translate.
 *
 * A pattern has values in braces. `{#score}` is a figure, a span of two or a row of them; `{joint}` is any
 * words, which are themselves told, one by one where they are a list with semicolons; `{=title}` is words
 * that are known, all of them, and otherwise the pattern does not fit.
 */
export type Sentences = Readonly<Record<string, string>>;

interface Pattern {
  readonly shape: RegExp;
  readonly names: readonly string[];
  readonly told: string;
}

const slots = /\{([#=]?[a-z-]+)\}/g;

/** 2.5, 8–12, or 30, 15, 15. */
const one = '[-−]?\\d+(?:\\.\\d+)?';
const figure = `(${one}(?:(?:–|, )${one})*)`;

const patternOf = ([english, told]: readonly [string, string]): Pattern => ({
  shape: new RegExp(
    `^${english
      .replace(/[.*+?^$()|[\]\\]/g, '\\$&')
      .replace(slots, (_, name: string) => (name.startsWith('#') ? figure : '(.+?)'))}$`,
  ),
  names: [...english.matchAll(slots)].map(([, name]) => name ?? ''),
  told,
});

/** The more of a sentence a pattern fixes, the earlier it is tried. */
const fixed = (english: string): number => english.replace(slots, '').length;

const sentencesIn = (text: string): readonly string[] => text.replace(/([.!?])\s+/g, '$1\n').split('\n');

/** Tells a text, or null where nothing is known of it. `comma` stands before the decimals of a figure. */
const tellerWith = (sentences: Sentences, comma: string) => {
  const patterns = Object.entries(sentences)
    .filter(([english]) => english.includes('{'))
    .sort(([one], [other]) => fixed(other) - fixed(one))
    .map(patternOf);
  const known = new Map(Object.entries(sentences));
  const listed = (value: string): readonly (string | null)[] => value.split('; ').map(whole);
  /** null where a value has to be known and is not. */
  const translatedValue = (name: string, value: string): string | null => {
    if (name.startsWith('#')) return value.replaceAll('.', comma);
    const all = whole(value);
    if (all !== null) return all;
    const parts = listed(value);
    if (name.startsWith('=')) return parts.includes(null) ? null : parts.join('; ');
    const untranslated = value.split('; ');
    return parts.map((part, place) => part ?? untranslated[place]).join('; ');
  };
  const fitted = ({ shape, names, told }: Pattern, text: string): string | null => {
    const found = shape.exec(text);
    if (!found) return null;
    const values = new Map(names.map((name, place) => [name, translatedValue(name, found[place + 1] ?? '')]));
    return [...values.values()].includes(null)
      ? null
      : told.replace(slots, (whole, name: string) => values.get(name) ?? whole);
  };
  const whole = (text: string): string | null => {
    const exact = known.get(text);
    if (exact !== undefined) return exact;
    for (const pattern of patterns) {
      const told = fitted(pattern, text);
      if (told !== null) return told;
    }
    return null;
  };
  return whole;
};

export const translatorOf = (sentences: Sentences, comma: string): ((text: string) => string) => {
  const whole = tellerWith(sentences, comma);
  return (text) => {
    const told = whole(text);
    if (told !== null) return told;
    const parts = sentencesIn(text).map(whole);
    // Half a text in each language helps nobody: all of it is known, or it stays.
    return parts.includes(null) ? text : parts.join(' ');
  };
};

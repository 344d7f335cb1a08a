/**
 * What somebody typed, made printable before anything is set: a character the fonts cannot show, or one that
 * would turn the text after it round, becomes a visible mark and is named. It never costs the whole paper.
 */
import { coveredBy } from './coverage.ts';
import { paperFonts } from './fonts.ts';

const mark = '▯';

/** Embeddings, overrides and isolates of the direction of writing: unseen, and they reach beyond their own text. */
const isDirection = (code: number): boolean =>
  (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);

let covered: ReadonlySet<number> | null = null;

const isPrintable = (code: number): boolean => {
  covered ??= coveredBy(paperFonts());
  return code >= 0x20 && !isDirection(code) && covered.has(code);
};

/** A word longer than a line may be broken anywhere: it must not run off the paper. */
const longWord = /\S{31,}/g;
const breakable = (text: string): string =>
  text.replace(longWord, (word) =>
    [...word].map((one, at) => (at % 10 === 9 ? `${one}\u200b` : one)).join(''),
  );

const nameOf = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;

export interface Legible<T> {
  readonly value: T;
  /** Each character that could not be printed, once: "U+1F9B5". */
  readonly unprintable: readonly string[];
}

const legibleText = (text: string, found: Set<string>): string =>
  breakable(
    [...text.normalize('NFC').replace(/\s+/g, (space) => (space === '\u00a0' ? space : ' '))]
      .map((character) => {
        if (isPrintable(character.codePointAt(0)!)) return character;
        found.add(nameOf(character));
        return mark;
      })
      .join(''),
  );

/** Every text in a value of lists and records. Drawings are not texts: they stand under `svg`. */
export const legible = <T>(value: T): Legible<T> => {
  const found = new Set<string>();
  const visit = (one: unknown): unknown => {
    if (typeof one === 'string') return legibleText(one, found);
    if (Array.isArray(one)) return one.map(visit);
    if (typeof one !== 'object' || one === null) return one;
    return Object.fromEntries(
      Object.entries(one).map(([name, part]) => [name, name === 'svg' ? part : visit(part)]),
    );
  };
  return { value: visit(value) as T, unprintable: [...found] };
};

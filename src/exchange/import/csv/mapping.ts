/** Which column of the file holds what: said, or found under a known heading, which is shown before it counts. */
import { CannotRead } from '../source.ts';
import { type Column, columns } from './columns.ts';
import { type CsvKind, type Separator, separators } from './how.ts';

export interface Mapped {
  readonly column: Column;
  readonly heading: string;
  /** Place of the cell in its row. */
  readonly place: number;
  /** Nobody has said it: the heading is one that is often used for it. */
  readonly isGuessed: boolean;
}

export interface Mapping {
  readonly mapped: readonly Mapped[];
  /** Headings of which nothing is taken. */
  readonly notTaken: readonly string[];
}

const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ');

/** By the name of our column its heading, from "day=Datum, pain=Schmerz". */
export const saidColumns = (text: string, kind: CsvKind): ReadonlyMap<string, string> => {
  const names = columns[kind].map(({ name }) => name);
  const pairs = text.split(/,(?=\s*\w+=)/).filter((part) => part.trim() !== '');
  return new Map(
    pairs.map((part) => {
      const [name = '', ...heading] = part.split('=');
      if (!names.includes(name.trim()) || heading.length === 0)
        throw new CannotRead(
          `"${part.trim()}" names no column. Write name=heading, with a name of ${names.join(', ')}.`,
        );
      return [name.trim(), heading.join('=').trim()];
    }),
  );
};

/** As it would be said in words, so that a guess is taken by saying it. */
export const asSaid = (mapped: readonly Mapped[]): string =>
  mapped.map(({ column, heading }) => `${column.name}=${heading}`).join(', ');

const refuseOtherSeparator = (headings: readonly string[], separator: Separator): void => {
  const [only = ''] = headings;
  const other = (Object.keys(separators) as Separator[]).find(
    (one) => one !== separator && only.includes(separators[one]),
  );
  if (headings.length === 1 && other)
    throw new CannotRead(`Read with ${separator} between the cells, the heading is one cell. Say ${other}.`);
};

const refuseTwice = (headings: readonly string[]): void => {
  const twice = headings.find((one, place) => one !== '' && headings.indexOf(one) !== place);
  if (twice) throw new CannotRead(`Two columns are headed "${twice}". Give each a heading of its own.`);
};

const placeOf = (headings: readonly string[], column: Column, said: ReadonlyMap<string, string>) => {
  const heading = said.get(column.name);
  if (heading !== undefined) {
    const place = headings.indexOf(heading);
    if (place < 0)
      throw new CannotRead(
        `No column is headed "${heading}". There are ${headings.map((one) => `"${one}"`).join(', ')}.`,
      );
    return { place, isGuessed: false };
  }
  const own = headings.indexOf(column.name);
  if (own >= 0) return { place: own, isGuessed: false };
  const guess = headings.findIndex((one) =>
    [column.name, ...column.also].some((name) => plain(name) === plain(one)),
  );
  return guess < 0 ? null : { place: guess, isGuessed: true };
};

/** A column that is said is taken by no guess of another one. */
export const mappingOf = (
  first: readonly string[],
  kind: CsvKind,
  said: ReadonlyMap<string, string>,
  separator: Separator,
): Mapping => {
  const headings = first.map((one) => one.trim());
  refuseOtherSeparator(headings, separator);
  refuseTwice(headings);
  const mapped: Mapped[] = [];
  const taken = new Set<number>();
  const all = columns[kind].flatMap((column) => {
    const found = placeOf(headings, column, said);
    return found ? [{ column, heading: headings[found.place]!, ...found }] : [];
  });
  for (const one of [...all].sort((a, b) => Number(a.isGuessed) - Number(b.isGuessed))) {
    if (taken.has(one.place)) {
      if (one.isGuessed) continue;
      throw new CannotRead(`The column "${one.heading}" is named for two things. Name it for one.`);
    }
    taken.add(one.place);
    mapped.push(one);
  }
  if (!mapped.some(({ column }) => column.name === 'day'))
    throw new CannotRead(
      `No column holds the day. Name it: day=HEADING, one of ${headings.map((one) => `"${one}"`).join(', ')}.`,
    );
  return { mapped, notTaken: headings.filter((_, place) => !taken.has(place)) };
};

/**
 * Rows that name nobody and cannot be put together again as those of one person: each says its class and what was
 * answered, and stands only where enough people of the class have the same one. What too few share is withheld column
 * by column from the last, and at the end the row is left out.
 */
import { withheld } from './bands.ts';
import { fewestAlike, type PeopleClass } from './classes.ts';
import { type RowFile, rowFiles } from './facts.ts';
import { settle } from './settle.ts';

interface Row {
  readonly of: string;
  readonly cells: readonly string[];
}

const countsBy = (rows: readonly Row[]): readonly number[] => {
  const counts = new Map<string, number>();
  for (const { of } of rows) counts.set(of, (counts.get(of) ?? 0) + 1);
  return [...counts.values()];
};

const largestShare = (rows: readonly Row[]): number => Math.max(0, ...countsBy(rows)) / rows.length;

/** Enough people, and nobody is more than twice as likely to be whose row it is as without its answers. */
const isSharedIn = (all: readonly Row[]) => {
  const most = largestShare(all) * 2;
  return (rows: readonly Row[]): boolean =>
    countsBy(rows).length >= fewestAlike && largestShare(rows) <= most;
};

const levelsFor = (columns: number): readonly ((row: Row) => readonly string[])[] =>
  Array.from(
    { length: columns },
    (_, hidden) =>
      ({ cells }: Row) =>
        cells.map((cell, place) => (place < columns - hidden ? cell : withheld)),
  );

export interface RowsOfFile {
  readonly rows: readonly (readonly string[])[];
  readonly leftOut: number;
}

export const unlinkedRowsOf = (file: RowFile, classes: readonly PeopleClass[]): RowsOfFile => {
  const rows: (readonly string[])[] = [];
  let leftOut = 0;
  for (const { label, members } of classes) {
    const all = members.flatMap((one) => one.rows[file].map((cells): Row => ({ of: one.id, cells })));
    const { settled, alone } = settle(all, levelsFor(rowFiles[file].length), isSharedIn(all));
    for (const group of settled) for (const _ of group.members) rows.push([...label, ...group.label]);
    leftOut += alone.length;
  }
  // By what they say: an order by person or by time would say what the rows do not.
  const keyed = rows.map((row) => ({ row, text: row.join('\t') }));
  keyed.sort((one, other) => (one.text < other.text ? -1 : one.text > other.text ? 1 : 0));
  return { rows: keyed.map(({ row }) => row), leftOut };
};

/** A CSV file as what each of its rows says. */
import type { Day } from '#core/time/day.ts';
import { type Bytes, CannotRead, type Fault, type Read, type Source } from '../source.ts';
import { type CellRead, type CellValue, cellIn } from './cells.ts';
import { type CsvKind, type Marks, separators } from './how.ts';
import { type Mapping, mappingOf, saidColumns } from './mapping.ts';
import { recordsOf } from './records.ts';
import { remembered } from './remembered.ts';
import { textOf } from './text.ts';
import { thingsOf } from './things.ts';

export interface CsvAsked extends Marks {
  readonly kind: CsvKind;
  /** "day=Datum, pain=Schmerz"; may be empty. */
  readonly map: string;
}

export interface CsvAbout {
  readonly today: Day;
  readonly born: Day;
}

/** As much of a cell as a report shows. */
const shown = (cell: string): string => (cell.length > 60 ? `${cell.slice(0, 60)}…` : cell);

interface Reader {
  readonly name: string;
  readonly heading: string;
  readonly place: number;
  readonly read: (cell: string) => CellRead;
}

const readersOf = ({ mapped }: Mapping, marks: Marks, about: CsvAbout): readonly Reader[] =>
  mapped.map(({ column: { name, cell: kind }, heading, place }) => ({
    ...{ name, heading, place },
    read: remembered((cell) => cellIn(cell, kind, { ...about, marks })),
  }));

const none: readonly never[] = [];

const wrongWidth = (record: readonly string[], place: number, width: number): Read => {
  // A row with nothing in it says nothing, however many cells it has.
  if (record.every((cell) => cell.trim() === '')) return { place, things: none, faults: none };
  const write = `${width} cells, as the heading has.`;
  return { place, things: none, faults: [{ place, at: '', found: `${record.length} cells`, write }] };
};

const rowRead = (
  record: readonly string[],
  place: number,
  width: number,
  readers: readonly Reader[],
  kind: CsvKind,
): Read => {
  if (record.length !== width) return wrongWidth(record, place, width);
  const values: Record<string, CellValue> = {};
  let faults: Fault[] | null = null;
  let isBlank = true;
  for (const { name, heading, place: at, read } of readers) {
    const told = read(record[at]!);
    if (told === null) continue;
    isBlank = false;
    if ('value' in told) values[name] = told.value;
    else {
      faults ??= [];
      faults.push({ place, at: heading, found: shown(record[at]!), write: told.write });
    }
  }
  if (faults) return { place, things: none, faults };
  if (isBlank && record.every((cell) => cell.trim() === '')) return { place, things: none, faults: none };
  const { things, amiss } = thingsOf(kind, values);
  if (amiss.length === 0) return { place, things, faults: none };
  const headingOf = (name: string) => readers.find((one) => one.name === name)?.heading ?? name;
  return {
    place,
    things,
    faults: amiss.map(([at, write]) => ({ place, at: headingOf(at), found: '', write })),
  };
};

/** As long as a heading mostly is, so that no more of a long file is read for it. */
const firstPiece = 2048;

async function* inSmallPieces(text: AsyncIterable<string>): AsyncIterable<string> {
  for await (const piece of text)
    for (let from = 0; from < piece.length; from += firstPiece) yield piece.slice(from, from + firstPiece);
}

/** The heading alone, and how its columns are read. */
export const csvMapping = async (bytes: Bytes, asked: CsvAsked): Promise<Mapping> => {
  const text = inSmallPieces(textOf(bytes, asked.encoding));
  for await (const records of recordsOf(text, separators[asked.separator])) {
    const [heading] = records;
    if (heading) return mappingOf(heading, asked.kind, saidColumns(asked.map, asked.kind), asked.separator);
  }
  throw new CannotRead('The file is empty. Its first row holds the headings.');
};

export const csvSource = (bytes: Bytes, asked: CsvAsked, mapping: Mapping, about: CsvAbout): Source => ({
  async *read() {
    const readers = readersOf(mapping, asked, about);
    let place = 0;
    let width = 0;
    for await (const records of recordsOf(textOf(bytes, asked.encoding), separators[asked.separator])) {
      const rows: Read[] = [];
      for (const record of records) {
        place += 1;
        if (place === 1) width = record.length;
        else rows.push(rowRead(record, place, width, readers, asked.kind));
      }
      yield rows;
    }
  },
});

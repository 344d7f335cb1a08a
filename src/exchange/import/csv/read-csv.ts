/** A CSV file as what each of its rows says. */
import type { Day } from '#core/time/day.ts';
import { type Bytes, CannotRead, type Fault, type Read, type Source } from '../source.ts';
import { type CellValue, cellIn } from './cells.ts';
import { thingsOf } from './columns.ts';
import { type CsvKind, type Marks, separators } from './how.ts';
import { type Mapping, mappingOf, saidColumns } from './mapping.ts';
import { recordsOf } from './records.ts';
import { textOf } from './text.ts';

export interface CsvAsked extends Marks {
  readonly kind: CsvKind;
  /** "day=Datum, pain=Schmerz"; may be empty. */
  readonly map: string;
}

export interface CsvAbout {
  readonly today: Day;
  readonly born: Day;
}

const isBlank = (record: readonly string[]): boolean => record.every((cell) => cell.trim() === '');

/** As much of a cell as a report shows. */
const shown = (cell: string): string => (cell.length > 60 ? `${cell.slice(0, 60)}…` : cell);

const rowRead = (
  record: readonly string[],
  place: number,
  width: number,
  { mapped }: Mapping,
  { kind, ...marks }: CsvAsked,
  about: CsvAbout,
): Read => {
  if (isBlank(record)) return { place, things: [], faults: [] };
  if (record.length !== width) {
    const found = `${record.length} cells`;
    return {
      place,
      things: [],
      faults: [{ place, at: '', found, write: `${width} cells, as the heading has.` }],
    };
  }
  const values: Record<string, CellValue> = {};
  const faults: Fault[] = [];
  for (const { column, place: at, heading } of mapped) {
    const cell = record[at]!;
    const told = cellIn(cell, column.cell, { ...about, marks });
    if (!told) continue;
    if ('value' in told) values[column.name] = told.value;
    else faults.push({ place, at: heading, found: shown(cell), write: told.write });
  }
  if (faults.length > 0) return { place, things: [], faults };
  const { things, amiss } = thingsOf(kind, values);
  const headingOf = (name: string) => mapped.find(({ column }) => column.name === name)?.heading ?? name;
  return {
    place,
    things,
    faults: amiss.map(([at, write]) => ({ place, at: headingOf(at), found: '', write })),
  };
};

const recordsIn = (bytes: Bytes, { encoding, separator }: CsvAsked) =>
  recordsOf(textOf(bytes, encoding), separators[separator]);

/** The heading alone, and how its columns are read. */
export const csvMapping = async (bytes: Bytes, asked: CsvAsked): Promise<Mapping> => {
  for await (const records of recordsIn(bytes, asked)) {
    const [heading] = records;
    if (heading) return mappingOf(heading, asked.kind, saidColumns(asked.map, asked.kind), asked.separator);
  }
  throw new CannotRead('The file is empty. Its first row holds the headings.');
};

export const csvSource = (bytes: Bytes, asked: CsvAsked, mapping: Mapping, about: CsvAbout): Source => ({
  async *read() {
    let place = 0;
    let width = 0;
    for await (const records of recordsIn(bytes, asked)) {
      const rows: Read[] = [];
      for (const record of records) {
        place += 1;
        if (place === 1) width = record.length;
        else rows.push(rowRead(record, place, width, mapping, asked, about));
      }
      yield rows;
    }
  },
});

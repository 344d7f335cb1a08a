/** A clinic as files for research: nobody named, and nobody found again much better than by guessing. */
import type { Day } from '#core/time/day.ts';
import { byteOrderMark, csvLines } from '../csv/cells.ts';
import type { ExportFile } from '../person-files.ts';
import { classColumns, classesOf, rowClassColumns, rowClassesOf } from './classes.ts';
import { type Left, type PersonFacts, type RowFile, rowFiles } from './facts.ts';
import { personColumns, personRowsOf } from './people.ts';
import { readMeOf, researchDictionary } from './read-me.ts';
import { treatmentTable } from './treatments.ts';
import { unlinkedRowsOf } from './unlinked-rows.ts';

export interface ResearchInput {
  readonly people: readonly PersonFacts[];
  readonly left: readonly Left[];
  /** Drawn for this export and kept nowhere: new ids and moved weeks hang on it. */
  readonly key: Buffer;
  readonly day: Day;
  readonly hasMark: boolean;
}

const fileNames = Object.keys(rowFiles) as readonly RowFile[];

export const researchFiles = ({ people, left, key, day, hasMark }: ResearchInput): readonly ExportFile[] => {
  const mark = hasMark ? byteOrderMark : '';
  const { settled, alone } = classesOf(people);
  const csv = (name: string, head: readonly string[], rows: readonly (readonly string[])[]): ExportFile => ({
    name: `${name}.csv`,
    text: `${mark}${csvLines([head, ...rows])}`,
  });
  const rowClasses = rowClassesOf(settled);
  const files = fileNames.map((file) => ({ file, ...unlinkedRowsOf(file, rowClasses) }));
  const told = people.length - alone.length;
  return [
    csv('people', [...personColumns, ...classColumns], personRowsOf(settled, { key, day })),
    ...files.map(({ file, rows }) => csv(file, [...rowClassColumns, ...rowFiles[file]], rows)),
    { name: 'dictionary.csv', text: `${mark}${researchDictionary()}` },
    { name: 'treatments.csv', text: `${mark}${treatmentTable()}` },
    { name: 'read-me.txt', text: readMeOf({ told, alone: alone.length, left, files }) },
  ];
};

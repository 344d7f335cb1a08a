/** The files of an export as one thing to save: alone as it is, several in a ZIP file. */
import { strToU8, zipSync } from 'fflate';
import type { ExportFile, ExportFormat } from './person-files.ts';

export interface Download {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

const types: Readonly<Record<ExportFormat, string>> = {
  fhir: 'application/fhir+json; charset=utf-8',
  csv: 'application/zip',
  json: 'application/json; charset=utf-8',
  calendar: 'text/calendar; charset=utf-8',
};

/** By format and day: nothing in a name says whose it is. */
const names: Readonly<Record<ExportFormat, (day: string) => string>> = {
  fhir: (day) => `record-${day}.fhir.json`,
  json: (day) => `record-${day}.json`,
  csv: (day) => `record-${day}.csv.zip`,
  calendar: (day) => `plan-${day}.ics`,
};

const zipped = (files: readonly ExportFile[], madeAt: number): Uint8Array =>
  zipSync(Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)])), {
    mtime: new Date(madeAt),
  });

export const downloadOf = (
  format: ExportFormat,
  files: readonly ExportFile[],
  { day, now }: { readonly day: string; readonly now: number },
): Download => ({
  name: names[format](day),
  type: types[format],
  bytes: format === 'csv' ? zipped(files, now) : strToU8(files.map(({ text }) => text).join('')),
});

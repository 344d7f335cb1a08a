/** The record of one person in an open format, as files by name. */
import type { Access } from '#data/access.ts';
import { recordDocumentOf } from '#data/patients/record-files.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { calendarFile } from './calendar/calendar.ts';
import { personCalendarOf } from './calendar/person-calendar.ts';
import { byteOrderMark } from './csv/cells.ts';
import { importedFiles } from './csv/imported-files.ts';
import { dictionary, headOf, personTables, readMe } from './csv/person-csv.ts';
import { checkedBundleOf } from './fhir/bundle.ts';
import { recordSentences } from './json/record-sentences.ts';
import { personRecordOf } from './person-record.ts';

export const exportFormats = ['fhir', 'csv', 'json', 'calendar'] as const;
export type ExportFormat = (typeof exportFormats)[number];

export interface ExportFile {
  readonly name: string;
  readonly text: string;
}

export interface How {
  /** Of a calendar’s words, and of what is said about CSV files. */
  readonly language: LanguageTag;
  /** Whether CSV files begin with the mark by which some spreadsheets know UTF-8. */
  readonly hasMark: boolean;
}

const nobody = 'This person is not of this clinic.';

const csvFiles = async (
  access: Access,
  patientId: string,
  { language, hasMark }: How,
): Promise<readonly ExportFile[]> => {
  const record = await personRecordOf(access, patientId);
  if (!record) throw new Error(nobody);
  const mark = hasMark ? byteOrderMark : '';
  return [
    ...personTables(patientId, record.rows).map(({ table, lines }) => ({
      name: `${table}.csv`,
      text: `${mark}${headOf(table)}${lines}`,
    })),
    ...importedFiles(record.rows).map(({ name, text }) => ({ name, text: `${mark}${text}` })),
    { name: 'dictionary.csv', text: `${mark}${dictionary()}` },
    { name: 'read-me.txt', text: readMe(language) },
  ];
};

const fhirFiles = async (access: Access, patientId: string): Promise<readonly ExportFile[]> => {
  const record = await personRecordOf(access, patientId);
  if (!record) throw new Error(nobody);
  return [{ name: 'record.fhir.json', text: `${JSON.stringify(checkedBundleOf(record), null, 1)}\n` }];
};

const jsonFiles = async (access: Access, patientId: string): Promise<readonly ExportFile[]> => {
  const document = await recordDocumentOf(access, patientId, recordSentences);
  return [{ name: 'record.json', text: `${JSON.stringify(document, null, 1)}\n` }];
};

const calendarFiles = async (access: Access, patientId: string, how: How): Promise<readonly ExportFile[]> => {
  const calendar = await personCalendarOf(access, patientId, how.language);
  if (!calendar) throw new Error(nobody);
  // The standard knows no calendar without an event.
  return calendar.events.length === 0 ? [] : [{ name: 'plan.ics', text: calendarFile(calendar) }];
};

const made: Readonly<
  Record<ExportFormat, (access: Access, patientId: string, how: How) => Promise<readonly ExportFile[]>>
> = { fhir: fhirFiles, csv: csvFiles, json: jsonFiles, calendar: calendarFiles };

/**
 * The caller has looked that the person is of the clinic, and has noted the opening. Empty where nothing is planned
 * that could stand in a calendar.
 */
export const personFiles = (
  access: Access,
  patientId: string,
  format: ExportFormat,
  how: How,
): Promise<readonly ExportFile[]> => made[format](access, patientId, how);

/**
 * Writes the record of one person, or of everybody at a clinic, as files for other programs. For whoever runs the
 * server; that it was handed on stands in the audit of each record before anything is written.
 */
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { NotValid } from '#exchange/fhir/bundle.ts';
import { type ExportFormat, exportFormats, type How, personFiles } from '#exchange/person-files.ts';
import { fewestAlike } from '#exchange/research/classes.ts';
import { languages } from '#messages/languages.ts';
import { accessesOf, onFileOfToday, patientIn } from '#server/command-access.ts';
import type { Runtime } from '#server/runtime.ts';
import { CannotGoOn } from '../say.mjs';
import { argumentsOf, flagOption, textOption } from './arguments.ts';
import { exportClinic } from './clinic-files.ts';
import { exportForResearch } from './research-folder.ts';

const tags = languages.map(({ tag }) => tag);

const usage = `Usage: DATABASE_FILE=… npm run --silent export -- --patient ID --format ${exportFormats.join('|')} --out PATH
or, everybody of each clinic in the file: … -- --clinic --format ${exportFormats.join('|')} --out FOLDER
or, each clinic for research, nobody named: … -- --clinic --format csv --de-identified --out FOLDER

ID is a person's id; in a file of the demo clinic it is the story's name, such as steady-progress.
fhir      FHIR R4 (4.0.1): of one person a Bundle in a file, of a clinic a file of lines for each resource type
csv       a folder with a file for each kind of row and a dictionary of every column;
          --mark puts the mark before each that some spreadsheets know UTF-8 by
json      every row as the clinic keeps it: of one person a file, of a clinic a line each
calendar  what is planned in the weeks ahead: of one person a file, of a clinic a file each and a list;
          --language ${tags.join('|')} is that of its words and of what is said about the tables (${tags[0]} when left out)
--de-identified  of a clinic as csv: ages in bands, days moved, no words, no names, and nobody told apart from fewer
          than ${fewestAlike}; its read-me says what was done and what it does not protect against

A file of several clinics gives a folder for each of them.
What is there already is never written over. Ends with 0 when all was written, 1 when a record could not be
written as the standard asks, 2 when the command was called in a wrong way.`;

interface Asked {
  /** null asks for everybody. */
  readonly patientId: string | null;
  readonly format: ExportFormat;
  readonly how: How;
  /** For research: nobody named. */
  readonly isDeIdentified: boolean;
  readonly out: string;
}

const { values: valuesOf, oneOf } = argumentsOf(usage);

const [text, flag] = [textOption, flagOption];
const options = {
  ...{ patient: text, clinic: flag, format: text, language: text, mark: flag },
  ...{ 'de-identified': flag, out: text, help: flag },
};

/** null asks for help. */
const askedIn = (args: readonly string[]): Asked | null => {
  const values = valuesOf(args, options);
  const { patient, clinic = false, format, language = tags[0], mark = false, out, help } = values;
  if (help) return null;
  const isDeIdentified = values['de-identified'] ?? false;
  if (clinic === (patient !== undefined))
    throw new CannotGoOn(`Give either --patient ID or --clinic.\n${usage}`, 2);
  const asked = {
    patientId: patient ?? null,
    format: oneOf('format', exportFormats, format),
    how: { language: oneOf('language', tags, language), hasMark: mark },
    isDeIdentified,
  };
  if (isDeIdentified && !(clinic && asked.format === 'csv'))
    throw new CannotGoOn(`--de-identified goes with --clinic and --format csv.\n${usage}`, 2);
  if (!out) throw new CannotGoOn(`Missing: --out.\n${usage}`, 2);
  if (existsSync(out)) throw new CannotGoOn(`${out} is there already. Name one that is not there yet.`, 2);
  return { ...asked, out };
};

/** Noted and stored before anything of the record leaves the file. */
const noteFor =
  (format: ExportFormat | 'research') =>
  async (access: Access, patientId: string): Promise<void> => {
    noteRead(access, { subject: `export.${format}`, patientId });
    await flushReads(access.store);
  };

const exportPerson = async (at: Runtime, patientId: string, { format, how, out }: Asked): Promise<void> => {
  const { access, patient } = await patientIn(at, 'export', patientId);
  await noteFor(format)(access, patient.id);
  const files = await personFiles(access, patient.id, format, how);
  if (files.length === 0)
    throw new CannotGoOn('Nothing is planned for this person; no calendar was written.', 1);
  // CSV is several files, and the dictionary belongs to them: a folder.
  const isFolder = format === 'csv';
  mkdirSync(isFolder ? out : path.dirname(path.resolve(out)), { recursive: true });
  for (const { name, text } of files)
    writeFileSync(isFolder ? path.join(out, name) : out, text, { flag: 'wx' });
  console.log(`${out} ${files.length} ${files.length === 1 ? 'file' : 'files'}`);
};

const exportAll = async (at: Runtime, { format, how, isDeIdentified, out }: Asked): Promise<void> => {
  const clinics = await accessesOf(at, 'export');
  for (const [place, access] of clinics.entries()) {
    // A folder for research is named by a number: its name would say which clinic it is.
    const name = isDeIdentified ? `clinic-${place + 1}` : access.clinicId;
    const folder = clinics.length === 1 ? out : path.join(out, name);
    if (isDeIdentified) await exportForResearch(access, folder, how, noteFor('research'));
    else await exportClinic(access, folder, format, how, noteFor(format));
  }
};

export const run = async (args: readonly string[]): Promise<number> => {
  const asked = askedIn(args);
  if (!asked) {
    console.log(usage);
    return 0;
  }
  return onFileOfToday(async (at) => {
    try {
      await (asked.patientId === null ? exportAll(at, asked) : exportPerson(at, asked.patientId, asked));
      return 0;
    } catch (error) {
      // It was not there before; half of a clinic would be taken for the whole.
      rmSync(asked.out, { recursive: true, force: true });
      if (error instanceof NotValid) throw new CannotGoOn(`${error.message}. Nothing was written.`, 1);
      throw error;
    }
  });
};

/** Everybody of a clinic as files, person by person: what is in memory is never more than one of them. */
import { closeSync, mkdirSync, openSync, writeFileSync, writeSync } from 'node:fs';
import path from 'node:path';
import type { Access } from '#data/access.ts';
import { clinicOf, patientOf, peopleOf } from '#data/patients/people.ts';
import { signInsOf } from '#data/patients/record-people.ts';
import { byteOrderMark } from '#exchange/csv/cells.ts';
import { dictionary, headOf, personTables, readMe } from '#exchange/csv/person-csv.ts';
import { personLines, sharedLines } from '#exchange/fhir/ndjson.ts';
import { type ExportFormat, type How, personFiles } from '#exchange/person-files.ts';
import { type PersonRecord, personRecordOf } from '#exchange/person-record.ts';
import { say } from '../say.mjs';

/** Files that grow, each opened when its first line comes. */
const growingIn = (folder: string) => {
  const open = new Map<string, { readonly file: number; lines: number }>();
  return {
    add: (name: string, text: string, lines: number, head = ''): void => {
      let to = open.get(name);
      if (!to) {
        to = { file: openSync(path.join(folder, name), 'wx'), lines: 0 };
        open.set(name, to);
        if (head !== '') writeSync(to.file, head);
      }
      writeSync(to.file, text);
      to.lines += lines;
    },
    close: (): void => {
      for (const [name, { file, lines }] of open) {
        closeSync(file);
        console.log(`${path.join(folder, name)} ${lines} ${lines === 1 ? 'line' : 'lines'}`);
      }
    },
  };
};

type Growing = ReturnType<typeof growingIn>;
export type Note = (access: Access, patientId: string) => Promise<void>;

const addFhir = (files: Growing, lines: ReturnType<typeof personLines>): void => {
  for (const { type, text } of lines) files.add(`${type}.ndjson`, text, 1);
};

const addCsv = (files: Growing, { patient, rows }: PersonRecord, { hasMark }: How): void => {
  for (const { table, lines, rows: count } of personTables(patient.id, rows))
    files.add(`${table}.csv`, lines, count, `${hasMark ? byteOrderMark : ''}${headOf(table)}`);
};

/** A file each, named by a number and not by the person, and a list by which somebody is found. */
const addCalendar = async (
  access: Access,
  id: string,
  folder: string,
  place: number,
  how: How,
): Promise<string> => {
  const name = `${String(place).padStart(4, '0')}.ics`;
  const [file] = await personFiles(access, id, 'calendar', how);
  if (file) writeFileSync(path.join(folder, name), file.text, { flag: 'wx' });
  const patient = (await patientOf(access, id))!;
  return `${patient.familyName}, ${patient.givenName}, born ${patient.birthDay}: ${file ? name : 'nothing planned'}`;
};

/** The same that a person's file has, on one line. */
const documentLine = async (access: Access, id: string, how: How): Promise<string> => {
  const [file] = await personFiles(access, id, 'json', how);
  return `${JSON.stringify(JSON.parse(file!.text))}\n`;
};

/** Told now and then, so that somebody who waits sees that it goes on. */
const peopleBetween = 25;

export const exportClinic = async (
  access: Access,
  folder: string,
  format: ExportFormat,
  how: How,
  note: Note,
): Promise<void> => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const clinic = (await clinicOf(access.store, access.clinicId))!;
  const people = await peopleOf(access);
  const files = growingIn(folder);
  const list: string[] = [];
  try {
    if (format === 'fhir') {
      const signIns = new Map((await signInsOf(access)).map((one) => [one.id, one]));
      addFhir(files, sharedLines({ clinic, signIns }));
    }
    for (const [at, { id }] of people.entries()) {
      await note(access, id);
      if (format === 'calendar') list.push(await addCalendar(access, id, folder, at + 1, how));
      else if (format === 'json') files.add('record.ndjson', await documentLine(access, id, how), 1);
      else {
        const record = (await personRecordOf(access, id))!;
        if (format === 'fhir') addFhir(files, personLines(record));
        else addCsv(files, record, how);
      }
      if ((at + 1) % peopleBetween === 0 || at + 1 === people.length)
        say(`${clinic.name}: ${at + 1} of ${people.length} people`);
    }
    if (format === 'csv') {
      files.add('dictionary.csv', `${how.hasMark ? byteOrderMark : ''}${dictionary()}`, 0);
      files.add('read-me.txt', readMe(how.language), 0);
    }
    if (format === 'calendar') files.add('people.txt', `${list.sort().join('\n')}\n`, list.length);
  } finally {
    files.close();
  }
};

/**
 * Writes the record of one person, or of everybody at a clinic, as files for other programs. For whoever runs the
 * server; that it was handed on stands in the audit of each record before anything is written.
 */
import { closeSync, existsSync, mkdirSync, openSync, rmSync, writeFileSync, writeSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { clinicOf, peopleOf } from '#data/patients/people.ts';
import { signInsOf } from '#data/patients/record-people.ts';
import { checkedBundleOf, NotValid } from '#exchange/fhir/bundle.ts';
import { type Line, personLines, sharedLines } from '#exchange/fhir/ndjson.ts';
import { type PersonRecord, personRecordOf } from '#exchange/person-record.ts';
import { accessesOf, patientIn } from '#server/command-access.ts';
import { catchUp, isDemoFile } from '#server/demo-file.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { readEnvironment } from '../environment.mjs';
import { CannotGoOn, say } from '../say.mjs';

const formats = ['fhir'] as const;
type Format = (typeof formats)[number];

const usage = `Usage: DATABASE_FILE=… npm run --silent export -- --patient ID --format ${formats.join('|')} --out FILE
or, everybody of each clinic in the file: … -- --clinic --format ${formats.join('|')} --out FOLDER

ID is a person's id; in a file of the demo clinic it is the story's name, such as steady-progress.
fhir: FHIR R4 (4.0.1). Of one person a Bundle; of a clinic one file of lines for each resource type.
A file of several clinics gives a folder for each of them.
What is there already is never written over. Ends with 0 when all was written, 1 when a record could not be
written as the standard asks, 2 when the command was called in a wrong way.`;

interface Asked {
  /** null asks for everybody. */
  readonly patientId: string | null;
  readonly format: Format;
  readonly out: string;
}

const valuesIn = (args: readonly string[]) => {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  try {
    const options = { patient: text, clinic: flag, format: text, out: text, help: flag };
    return parseArgs({ args: [...args], options }).values;
  } catch (error) {
    throw new CannotGoOn(`${error instanceof Error ? error.message : ''}\n${usage}`, 2);
  }
};

/** null asks for help. */
const askedIn = (args: readonly string[]): Asked | null => {
  const { patient, clinic = false, format, out, help } = valuesIn(args);
  if (help) return null;
  if (clinic === (patient !== undefined))
    throw new CannotGoOn(`Give either --patient ID or --clinic.\n${usage}`, 2);
  const known = formats.find((one) => one === format);
  if (!known)
    throw new CannotGoOn(
      `--format is ${formats.join(' or ')}${format ? `, not "${format}"` : ''}.\n${usage}`,
      2,
    );
  if (!out) throw new CannotGoOn(`Missing: --out.\n${usage}`, 2);
  if (existsSync(out)) throw new CannotGoOn(`${out} is there already. Name one that is not there yet.`, 2);
  return { patientId: patient ?? null, format: known, out };
};

/** Noted and stored before anything of the record leaves the file. */
const readFor = async (access: Access, patientId: string, format: Format): Promise<PersonRecord> => {
  noteRead(access, { subject: `export.${format}`, patientId });
  await flushReads(access.store);
  const record = await personRecordOf(access, patientId);
  if (!record) throw new CannotGoOn(`No patient "${patientId}".`, 2);
  return record;
};

const exportPerson = async (at: Runtime, { patientId, format, out }: Asked): Promise<void> => {
  const { access, patient } = await patientIn(at, 'export', patientId!);
  const bundle = checkedBundleOf(await readFor(access, patient.id, format));
  mkdirSync(path.dirname(path.resolve(out)), { recursive: true });
  writeFileSync(out, `${JSON.stringify(bundle, null, 1)}\n`, { flag: 'wx' });
  console.log(`${out} ${bundle.entry?.length ?? 0} resources`);
};

/** A file for each type, opened when its first line comes. */
const filesIn = (folder: string) => {
  const open = new Map<string, { readonly file: number; lines: number }>();
  return {
    write: (lines: readonly Line[]): void => {
      for (const { type, text } of lines) {
        const to = open.get(type) ?? { file: openSync(path.join(folder, `${type}.ndjson`), 'wx'), lines: 0 };
        open.set(type, to);
        writeSync(to.file, text);
        to.lines += 1;
      }
    },
    close: (): ReadonlyMap<string, number> => {
      for (const { file } of open.values()) closeSync(file);
      return new Map([...open].map(([type, { lines }]) => [type, lines]));
    },
  };
};

/** Told now and then, so that somebody who waits sees that it goes on. */
const peopleBetween = 25;

const exportClinic = async (access: Access, folder: string, format: Format): Promise<void> => {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const clinic = (await clinicOf(access.store, access.clinicId))!;
  const signIns = new Map((await signInsOf(access)).map((one) => [one.id, one]));
  const people = await peopleOf(access);
  const files = filesIn(folder);
  try {
    files.write(sharedLines({ clinic, signIns }));
    for (const [at, { id }] of people.entries()) {
      files.write(personLines(await readFor(access, id, format)));
      if ((at + 1) % peopleBetween === 0 || at + 1 === people.length)
        say(`${clinic.name}: ${at + 1} of ${people.length} people`);
    }
  } finally {
    for (const [type, lines] of files.close())
      console.log(`${path.join(folder, `${type}.ndjson`)} ${lines} ${lines === 1 ? 'line' : 'lines'}`);
  }
};

const exportAll = async (at: Runtime, { format, out }: Asked): Promise<void> => {
  const clinics = await accessesOf(at, 'export');
  for (const access of clinics)
    await exportClinic(access, clinics.length === 1 ? out : path.join(out, access.clinicId), format);
};

export const run = async (args: readonly string[]): Promise<number> => {
  const asked = askedIn(args);
  if (!asked) {
    console.log(usage);
    return 0;
  }
  const settings = readEnvironment();
  if (!existsSync(settings.DATABASE_FILE))
    throw new CannotGoOn(`The database file ${settings.DATABASE_FILE} does not exist.`, 2);
  const at = openRuntime(settings);
  try {
    if (isDemoFile(at.store)) await catchUp(at);
    await (asked.patientId === null ? exportAll(at, asked) : exportPerson(at, asked));
    return 0;
  } catch (error) {
    // It was not there before; half of a clinic would be taken for the whole.
    rmSync(asked.out, { recursive: true, force: true });
    if (error instanceof NotValid) throw new CannotGoOn(`${error.message}. Nothing was written.`, 1);
    throw error;
  } finally {
    at.store.close();
  }
};

/**
 * Takes past days of one person from a file of another system. For whoever runs the server: read through first, told
 * row by row, taken whole or not at all, and taken back as one.
 */
import { createReadStream } from 'node:fs';
import path from 'node:path';
import type { NewPatient } from '#core/record/patient-details.ts';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { Changed, importsOf, undoImport } from '#data/exchange/imports.ts';
import { addPatient, clinicOf } from '#data/patients/people.ts';
import { samePatients } from '#data/patients/same-patients.ts';
import { newPersonIn } from '#exchange/import/fhir/new-person.ts';
import {
  type File,
  type Prepared,
  prepareImport,
  takePrepared,
  type Whose,
  whyNotTaken,
} from '#exchange/import/prepare.ts';
import { CannotRead, type Fault } from '#exchange/import/source.ts';
import { accessesOf, onFileOfToday, patientIn } from '#server/command-access.ts';
import type { Runtime } from '#server/runtime.ts';
import { CannotGoOn, say } from '../say.mjs';
import { holdFile } from '../server/one-server.mjs';
import { newPerson, type Run, runIn, type Undo, usage } from './import-asked.ts';
import { reportLines } from './import-report.ts';

const fileAt = (from: string): File => ({ name: path.basename(from), bytes: () => createReadStream(from) });

/** Told now and then, so that somebody who waits sees that it goes on. */
const rowsBetween = 10_000;

/** Faults are told as they come; beyond so many a file wants mending and not a list. */
const mostFaults = 100;

/** Somebody of the clinic, or somebody the file is about whom the clinic does not have yet. */
interface Whom {
  readonly access: Access;
  readonly person: Whose['patient'];
  /** Of somebody new; the record is made in the write that takes the file. */
  readonly add: NewPatient | null;
}

/** Asked as on the desk. Nothing is said of somebody kept to a care team, so that may be the same person too. */
const refuseKnown = async (access: Access, add: NewPatient): Promise<void> => {
  const found = (await samePatients(access, add)).filter(
    ({ person, signs }) => person === null || signs.includes('birth-and-name'),
  );
  if (found.length === 0) return;
  throw new CannotGoOn(
    `The clinic may have this person already: ${found.map(({ patientId }) => patientId).join(', ')}. If it is the same person, say --patient with that id. If it is somebody else, add the person on the desk and say --patient with the new id. Nothing was taken.`,
    1,
  );
};

const whomOf = async (at: Runtime, { patientId, asked, from }: Run): Promise<Whom> => {
  if (patientId !== newPerson) {
    const { access, patient } = await patientIn(at, 'import', patientId);
    noteRead(access, { subject: 'import.check', patientId: patient.id });
    await flushReads(at.store);
    return { access, person: patient, add: null };
  }
  if (asked.format !== 'fhir') throw new CannotGoOn('Somebody new is made from a FHIR file alone.', 2);
  const [access, ...others] = await accessesOf(at, 'import');
  if (!access || others.length > 0)
    throw new CannotGoOn(
      'Somebody new is made in a file with one clinic. Add the person on the desk first.',
      2,
    );
  const add = await newPersonIn(fileAt(from).bytes, asked.isLines, access.day);
  await refuseKnown(access, add);
  await flushReads(at.store);
  return { access, person: { id: newPerson, ...add }, add };
};

const prepare = async ({ access, person: patient }: Whom, { from, asked }: Run): Promise<Prepared> => {
  const clinic = (await clinicOf(access.store, access.clinicId))!;
  let [told, faults] = [0, 0];
  const onFault = ({ place, at, found, write }: Fault) => {
    faults += 1;
    if (faults > mostFaults) return;
    console.log([`row ${place}`, at, found === '' ? null : `"${found}"`, write].filter(Boolean).join(' · '));
  };
  const onProgress = (read: number) => {
    if (read - told < rowsBetween) return;
    told = read;
    say(`${read} rows read`);
  };
  const whose = { patient, clinic, today: access.day };
  const prepared = await prepareImport(fileAt(from), asked, whose, { onFault, onProgress });
  if (faults > mostFaults) console.log(`… and ${faults - mostFaults} more`);
  return prepared;
};

/** One write holds everybody else's; beside a working server only what takes it less than a second. */
const mostBesideServer = 5000;

const serving = (file: string, holder: string): string =>
  `A server${holder} is running on ${file}. Stop it first: a file this long would hold what it saves. Nothing was taken.`;

interface Taken {
  readonly patientId: string;
  readonly importId: string;
}

const takeFor = async (whom: Whom, prepared: Prepared, asked: Run): Promise<Taken> => {
  const { file } = whom.access.store;
  const lock = prepared.report.taken > mostBesideServer ? holdFile(file, serving) : null;
  try {
    return await take(whom, prepared, asked);
  } finally {
    lock?.release();
  }
};

const whyNot = async ({ access, person, add }: Whom, prepared: Prepared, asked: Run) =>
  whyNotTaken(prepared, asked, add ? [] : await importsOf(access, person.id));

const take = (whom: Whom, prepared: Prepared, asked: Run): Promise<Taken> => {
  const { access, person, add } = whom;
  return access.store.write(async () => {
    // Asked again within the write: since it was told, somebody else may have taken the same file.
    const why = await whyNot(whom, prepared, asked);
    if (why.length > 0) throw new CannotGoOn(`${why.join(' ')} Nothing was taken.`, 1);
    if (add) await refuseKnown(access, add);
    const patientId = add ? await addPatient(access, add) : person.id;
    return { patientId, importId: await takePrepared(access, patientId, prepared, asked) };
  });
};

const runImport = async (at: Runtime, asked: Run): Promise<number> => {
  const whom = await whomOf(at, asked);
  const prepared = await prepare(whom, asked);
  for (const line of reportLines(prepared)) console.log(line);
  const why = await whyNot(whom, prepared, asked);
  for (const line of why) console.log(`not taken · ${line}`);
  if (asked.isDry || why.length > 0) {
    console.log('Nothing was taken.');
    return why.length > 0 ? 1 : 0;
  }
  const { patientId, importId } = await takeFor(whom, prepared, asked);
  if (whom.add) console.log(`added as ${patientId}`);
  console.log(`taken as import ${importId}`);
  return 0;
};

const runUndo = async (at: Runtime, { patientId, undo, reason }: Undo): Promise<number> => {
  const { access, patient } = await patientIn(at, 'import', patientId);
  const undone = await undoImport(access, patient.id, undo, reason);
  if (undone === 'unknown') throw new CannotGoOn(`There is no import "${undo}" of this person.`, 2);
  console.log(undone === 'undone' ? 'Taken back.' : 'It had been taken back before.');
  return 0;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const asked = runIn(args);
  if (!asked) {
    console.log(usage);
    return 0;
  }
  return onFileOfToday(async (at) => {
    try {
      return await ('undo' in asked ? runUndo(at, asked) : runImport(at, asked));
    } catch (error) {
      if (error instanceof CannotRead || error instanceof Changed)
        throw new CannotGoOn(`${error.message} Nothing was taken.`, 1);
      throw error;
    }
  });
};

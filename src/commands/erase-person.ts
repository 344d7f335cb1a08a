/**
 * Erases a person from the clinic's file, with the server stopped: the words and names written about the person, who
 * it was, the sign-in. Figures stay, belonging to nobody. `--due` lists the records whose care ended longer ago than
 * the clinic keeps them. Nothing is erased by itself.
 */
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { endedCare, isInCare } from '#data/erasure/due.ts';
import { type Because, erasePerson, leaveNoTrace } from '#data/erasure/erase-person.ts';
import { mergedWith } from '#data/patients/merges.ts';
import { clinicIds, patientOf } from '#data/patients/people.ts';
import { openRuntime, type Runtime, zoneOf } from '#server/runtime.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';
import { holdFile } from './server/one-server.mjs';

const usage =
  'Usage: DATABASE_FILE=… npm run erase-person -- --due | --patient ID --named "Given Family" --because asked|retention';

interface Asked {
  readonly patientId: string;
  readonly name: string;
  readonly because: Because;
}

/** Null asks for the list. */
const askedIn = (args: readonly string[]): Asked | null => {
  try {
    const options = {
      due: { type: 'boolean' },
      patient: { type: 'string' },
      named: { type: 'string' },
      because: { type: 'string' },
    } as const;
    const { due = false, patient, named, because } = parseArgs({ args: [...args], options }).values;
    if (due && args.length === 1) return null;
    const isReason = because === 'asked' || because === 'retention';
    if (!due && patient && named && isReason) return { patientId: patient, name: named, because };
  } catch {
    // Said below, as for what is missing.
  }
  throw new CannotGoOn(usage, 2);
};

const serving = (file: string, holder: string): string =>
  `A server${holder} is running on ${file}. Stop it first: it holds in memory what is erased here.`;

const accessTo = async (at: Runtime, clinicId: string): Promise<Access> => {
  const now = at.clock.now();
  const day = dayAt(now, await zoneOf(at, clinicId));
  const who = { actorId: 'erase-person', actorName: 'Whoever runs the server' };
  return { store: at.store, auditKey: at.keys.audit, clinicId, ...who, now, day };
};

const listDue = async (at: Runtime): Promise<number> => {
  for (const clinicId of await clinicIds(at.store)) {
    const access = await accessTo(at, clinicId);
    const due = (await endedCare(access)).filter(({ dueOn }) => dueOn <= access.day);
    console.log(`clinic ${clinicId}: ${due.length} records are kept longer than the clinic's years`);
    for (const { patientId, endedOn, hadEpisode, dueOn } of due) {
      const ended = hadEpisode ? 'care ended on' : 'no episode of care, last written to on';
      console.log(`${patientId}: ${ended} ${endedOn}, due since ${dueOn}`);
    }
  }
  return 0;
};

const plain = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();

/** The clinic's access to the person, or why nothing is erased. */
const accessToPerson = async (at: Runtime, { patientId, name }: Asked): Promise<Access> => {
  for (const clinicId of await clinicIds(at.store)) {
    const access = await accessTo(at, clinicId);
    const person = await patientOf(access, patientId);
    if (!person) continue;
    if (plain(`${person.givenName} ${person.familyName}`) === plain(name)) return access;
    throw new CannotGoOn(
      `The record ${patientId} is of somebody with another name. Give both names as they stand at the head of the record.`,
      2,
    );
  }
  throw new CannotGoOn(
    `There is no person with the record ${patientId}. The id stands in the address of the record.`,
    2,
  );
};

const requireMay = async (access: Access, ids: readonly string[], because: Because): Promise<void> => {
  for (const id of ids) {
    if (await isInCare(access, id)) {
      throw new CannotGoOn(
        `An episode of care of the record ${id} goes on. A clinician ends it first, with its reason, in the record.`,
      );
    }
  }
  if (because === 'asked') return;
  const care = (await endedCare(access)).filter(({ patientId }) => ids.includes(patientId));
  const waits = care.find(({ dueOn }) => dueOn > access.day);
  if (waits) {
    throw new CannotGoOn(
      `The clinic keeps this record until ${waits.dueOn}. Before that it is erased only because the person asked: --because asked`,
    );
  }
};

const backupsBeside = (file: string): readonly string[] => {
  const folder = `${file}.backups`;
  return existsSync(folder) ? readdirSync(folder).map((name) => path.join(folder, name)) : [];
};

const erase = async (at: Runtime, asked: Asked): Promise<number> => {
  const access = await accessToPerson(at, asked);
  const ids = [asked.patientId, ...(await mergedWith(access, asked.patientId))];
  await requireMay(access, ids, asked.because);
  const rows = await erasePerson(access, ids, asked.because, at.keys.auditKeys);
  leaveNoTrace(at.store);
  console.log(`erased ${ids.join(', ')}: words were taken out of ${rows} rows`);
  for (const one of backupsBeside(at.store.file)) console.log(`still holds them: ${one}`);
  console.log(
    'Backups made before today hold them until they are destroyed, and so does every paper and file that was handed on. Note the id and the day apart: when such a backup is restored, erase again.',
  );
  return 0;
};

export const run = async (args: readonly string[]): Promise<number> => {
  const asked = askedIn(args);
  const settings = readEnvironment();
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const lock = asked ? holdFile(file, serving) : null;
  const at = openRuntime(settings);
  try {
    return asked ? await erase(at, asked) : await listDue(at);
  } finally {
    at.store.close();
    lock?.release();
  }
};

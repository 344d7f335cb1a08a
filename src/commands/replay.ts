/**
 * Looks back at what was decided, and changes nothing of a record. Without settings every stored decision is decided
 * again from its stored facts and accounted for, or gathered anew; with settings the facts are gathered anew from the record as it was
 * known then, and the days are listed on which a joint would have had another answer. It tells of records, so that it
 * was asked stands in the audit as an opening. It works beside a running server.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { movedFrom } from '#api/inputs/what-if.ts';
import type { Access } from '#data/access.ts';
import { flushReads, noteRead } from '#data/audit/audit.ts';
import { patientOf } from '#data/patients/people.ts';
import type { Moved } from '#data/replay/gather-anew.ts';
import { mostWeeks, usualWeeks } from '#data/replay/what-if.ts';
import { accessesOf, onClinicFile } from '#server/command-access.ts';
import type { Runtime } from '#server/runtime.ts';
import { accountAnew } from './replay/account-anew.ts';
import { accountFor } from './replay/account-for.ts';
import { csvHead, tellWhatIf } from './replay/tell-what-if.ts';
import { CannotGoOn } from './say.mjs';

const usage = `Usage: DATABASE_FILE=… npm run --silent replay -- [--patient ID] [--clinic ID] [--anew | --settings FILE [--weeks N]] [--json | --csv] [--help]

Without --settings: decides every stored decision again from its stored facts. Ends with 1 where one comes out
otherwise, or cannot be decided again.
With --anew: gathers the facts of every stored decision anew, from the record as it was known then, under the settings
of its time. Ends with 1 where facts or answers differ.
With --settings: what these settings would have said over the last N weeks (${usualWeeks}, at most ${mostWeeks}). FILE is JSON, such as
{"severe-pain": 7}; with --patient also usual values of joints, such as
{"joints": {"right-knee": {"acceptablePainLimit": 6, "usualPain": 3, "bandOver": 1}}}.
--json writes one JSON line for each decision or day, and one for the counts. --csv, with --settings, writes the days
as CSV with a head; counts and warning then go to standard error.`;

interface Asked {
  readonly patientId: string | null;
  readonly clinicId: string | null;
  readonly moved: Moved | null;
  readonly isAnew: boolean;
  readonly weeks: number;
  readonly isJson: boolean;
  readonly isCsv: boolean;
}

const weeksIn = (given: string | undefined): number => {
  const weeks = Number(given ?? usualWeeks);
  if (Number.isInteger(weeks) && weeks >= 1 && weeks <= mostWeeks) return weeks;
  throw new CannotGoOn(`--weeks is a whole number from 1 to ${mostWeeks}, not "${given}".`, 2);
};

const movedIn = (file: string | undefined): Moved | null => {
  if (file === undefined) return null;
  let read: unknown;
  try {
    read = JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new CannotGoOn(`${file} cannot be read as JSON: ${(error as Error).message}`, 2);
  }
  const moved = movedFrom(read);
  if ('refusals' in moved) throw new CannotGoOn(`${file}: ${moved.refusals.join(' ')}`, 2);
  return moved;
};

const valuesIn = (args: readonly string[]) => {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  const options = {
    patient: text,
    clinic: text,
    settings: text,
    weeks: text,
    anew: flag,
    json: flag,
    csv: flag,
    help: flag,
  };
  try {
    return parseArgs({ args: [...args], options }).values;
  } catch (error) {
    throw new CannotGoOn(`${(error as Error).message}\n${usage}`, 2);
  }
};

const askedIn = ({
  patient,
  clinic,
  settings,
  weeks,
  anew,
  json,
  csv,
}: ReturnType<typeof valuesIn>): Asked => {
  const moved = movedIn(settings);
  if (anew && moved) throw new CannotGoOn(`--anew asks without --settings. ${usage}`, 2);
  if (csv && (json || !moved))
    throw new CannotGoOn(`--csv goes with --settings, and without --json. ${usage}`, 2);
  if (weeks !== undefined && !moved) throw new CannotGoOn(`--weeks goes with --settings. ${usage}`, 2);
  if (moved && Object.keys(moved.joints).length > 0 && !patient)
    throw new CannotGoOn('Usual values of joints are one person’s: name the patient with --patient.', 2);
  return {
    patientId: patient ?? null,
    clinicId: clinic ?? null,
    moved,
    isAnew: anew === true,
    weeks: weeksIn(weeks),
    isJson: json === true,
    isCsv: csv === true,
  };
};

/** Every clinic that is meant; a patient is looked for in each. */
const accessesFor = async (at: Runtime, { clinicId, patientId }: Asked): Promise<readonly Access[]> => {
  const all = (await accessesOf(at, 'replay')).filter(
    (one) => clinicId === null || one.clinicId === clinicId,
  );
  if (all.length === 0) throw new CannotGoOn(`There is no clinic ${clinicId ?? ''} in ${at.store.file}.`, 2);
  if (patientId === null) return all;
  const found = await Promise.all(all.map((access) => patientOf(access, patientId)));
  const own = all.filter((_, place) => found[place]);
  if (own.length === 0) throw new CannotGoOn(`There is no patient ${patientId} in ${at.store.file}.`, 2);
  return own;
};

const told = (access: Access, { moved, isAnew, patientId, weeks, isJson, isCsv }: Asked): Promise<number> => {
  if (moved)
    return tellWhatIf(access, patientId, { moved, weeks }, isCsv ? 'csv' : isJson ? 'json' : 'words');
  return isAnew ? accountAnew(access, patientId, isJson) : accountFor(access, patientId, isJson);
};

export const run = async (args: readonly string[]): Promise<number> => {
  const given = valuesIn(args);
  if (given.help) {
    console.log(usage);
    return 0;
  }
  const asked = askedIn(given);
  return onClinicFile(async (at) => {
    const accesses = await accessesFor(at, asked);
    for (const access of accesses)
      noteRead(access, { subject: 'replay', ...(asked.patientId ? { patientId: asked.patientId } : {}) });
    // Before a word is said: what cannot be written down is not shown.
    await flushReads(at.store);
    if (asked.isCsv) process.stdout.write(csvHead);
    let worst = 0;
    for (const access of accesses) worst = Math.max(worst, await told(access, asked));
    return worst;
  });
};

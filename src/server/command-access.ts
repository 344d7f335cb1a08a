/** What a command reads a file's clinics with: as itself, on the clinic's own day, and in the clinic's audit. */
import { existsSync } from 'node:fs';
import { readEnvironment } from '#commands/environment.mjs';
import { CannotGoOn } from '#commands/say.mjs';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { clinicIds, clinicOf, type Patient, patientOf } from '#data/patients/people.ts';
import { catchUp, isDemoFile } from './demo-file.ts';
import { openRuntime, type Runtime } from './runtime.ts';

export const accessesOf = async (at: Runtime, command: string): Promise<readonly Access[]> => {
  const now = at.clock.now();
  const ids = await clinicIds(at.store);
  const clinics = await Promise.all(ids.map((id) => clinicOf(at.store, id)));
  const who = { actorId: command, actorName: `Command: ${command}` };
  return clinics.flatMap((clinic) =>
    clinic
      ? [
          {
            ...{ store: at.store, auditKey: at.keys.audit, clinicId: clinic.id, ...who, now },
            day: dayAt(now, clinic.zone),
          },
        ]
      : [],
  );
};

export const patientIn = async (
  at: Runtime,
  command: string,
  patientId: string,
): Promise<{ readonly access: Access; readonly patient: Patient }> => {
  for (const access of await accessesOf(at, command)) {
    const patient = await patientOf(access, patientId);
    if (patient) return { access, patient };
  }
  throw new CannotGoOn(`No patient "${patientId}" is in ${at.settings.DATABASE_FILE}.`, 2);
};

/** On the file that is named, which a command never makes; it is closed again whatever becomes of the work. */
export const onClinicFile = async <T>(work: (at: Runtime) => Promise<T>): Promise<T> => {
  const settings = readEnvironment();
  const file = settings.DATABASE_FILE;
  if (!existsSync(file)) throw new CannotGoOn(`The database file ${file} does not exist.`, 2);
  const at = openRuntime(settings);
  try {
    return await work(at);
  } finally {
    at.store.close();
  }
};

/** The same, a file of the demo as on the demo's today. */
export const onFileOfToday = <T>(work: (at: Runtime) => Promise<T>): Promise<T> =>
  onClinicFile(async (at) => {
    if (isDemoFile(at.store)) await catchUp(at);
    return work(at);
  });

/** What a command reads a file's clinics with: as itself, on the clinic's own day, and in the clinic's audit. */

import { CannotGoOn } from '#commands/say.mjs';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { clinicIds, clinicOf, type Patient, patientOf } from '#data/patients/people.ts';
import type { Runtime } from './runtime.ts';

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

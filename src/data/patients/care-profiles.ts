/** Care profiles as versions: the newest one holds. */
import { desc } from 'drizzle-orm';
import { type Access, knownRows } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { careProfile } from '../schema/schema.ts';

export const newestCareProfileRow = patientQuery((db) =>
  db.select().from(careProfile).where(ofPatient(careProfile)).orderBy(desc(careProfile.version)).limit(1),
);

export const careProfileRows = patientQuery((db) =>
  db.select().from(careProfile).where(ofPatient(careProfile)).orderBy(desc(careProfile.version)),
);

export const newestProfile = async (access: Access, patientId: string) => {
  if (access.knownAt !== undefined) {
    return knownRows(access, await careProfileRows(access, patientId))[0] ?? null;
  }
  const [row] = await newestCareProfileRow(access, patientId);
  return row ?? null;
};

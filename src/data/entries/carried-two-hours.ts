/** Answers given two hours after a session belong to it as it stands, also when its entry was amended in between. */
import { randomUUID } from 'node:crypto';
import { and, eq, sql } from 'drizzle-orm';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { trainingSession, twoHours } from '../schema/schema.ts';

const named = patientQuery((db) =>
  db
    .select({ id: trainingSession.id, entryId: trainingSession.entryId })
    .from(trainingSession)
    .where(and(ofPatient(trainingSession), eq(trainingSession.entryId, sql.placeholder('entryId')))),
);

const amending = patientQuery((db) =>
  db
    .select({ id: trainingSession.id, entryId: trainingSession.entryId })
    .from(trainingSession)
    .where(and(ofPatient(trainingSession), eq(trainingSession.amends, sql.placeholder('entryId')))),
);

/** The session an entry stands for now: itself, or the last that amends it; null when it has not arrived. */
export const sessionNow = async (
  access: Access,
  patientId: string,
  entryId: string,
): Promise<{ readonly id: string } | null> => {
  let [session] = await named(access, patientId, { entryId });
  for (let next = session; next; [next] = await amending(access, patientId, { entryId: next.entryId })) {
    session = next;
  }
  return session ?? null;
};

/** Copies them from the entry that was amended; without one nothing is done. */
export const carryTwoHours = async (
  tx: Db,
  access: Access,
  patientId: string,
  amendedEntryId: string,
  sessionId: string,
): Promise<void> => {
  const rows = await tx
    .select({ row: twoHours })
    .from(twoHours)
    .innerJoin(trainingSession, eq(trainingSession.id, twoHours.sessionId))
    .where(
      and(
        eq(twoHours.clinicId, access.clinicId),
        eq(twoHours.patientId, patientId),
        eq(trainingSession.entryId, amendedEntryId),
      ),
    );
  const copies = rows.map(({ row }) => {
    const id = randomUUID();
    return { ...row, id, entryId: `carried-${id}`, sessionId };
  });
  if (copies.length > 0) await tx.insert(twoHours).values(copies);
};

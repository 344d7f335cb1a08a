/** A clinician confirms the time of an entry from a doubtful clock: a new row that amends it, then an evaluation. */
import { createHash, randomUUID } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import type { Db } from '../database/connection.ts';
import { evaluateRecord } from '../decision/evaluate.ts';
import { morning, morningJoint, sessionJoint, setLog, trainingSession } from '../schema/schema.ts';
import { carryTwoHours } from './carried-two-hours.ts';
import { confirmedIdOf } from './confirmed-id.ts';

type EntryRow = typeof trainingSession.$inferSelect | typeof morning.$inferSelect;

/** The same entry under a new id, its clock no longer doubtful. */
const confirmed = <R extends EntryRow>(row: R, access: Access): R => {
  const entryId = confirmedIdOf(row.entryId);
  const digest = createHash('sha256').update(`${row.digest} confirmed`).digest('hex');
  return {
    ...row,
    id: randomUUID(),
    entryId,
    digest,
    amends: row.entryId,
    clockDoubtful: false,
    enteredBy: access.actorId,
    arrivedAt: access.now,
  };
};

const copySession = async (tx: Db, access: Access, patientId: string, id: string): Promise<string | null> => {
  const [row] = await tx
    .select()
    .from(trainingSession)
    .where(
      and(
        eq(trainingSession.clinicId, access.clinicId),
        eq(trainingSession.patientId, patientId),
        eq(trainingSession.id, id),
      ),
    );
  if (!row?.clockDoubtful) return null;
  const copy = confirmed(row, access);
  await tx.insert(trainingSession).values(copy);
  const sets = await tx
    .select()
    .from(setLog)
    .where(and(eq(setLog.patientId, patientId), eq(setLog.sessionId, id)));
  if (sets.length > 0)
    await tx.insert(setLog).values(sets.map((set) => ({ ...set, id: randomUUID(), sessionId: copy.id })));
  const joints = await tx
    .select()
    .from(sessionJoint)
    .where(and(eq(sessionJoint.patientId, patientId), eq(sessionJoint.sessionId, id)));
  if (joints.length > 0)
    await tx.insert(sessionJoint).values(joints.map((joint) => ({ ...joint, sessionId: copy.id })));
  await carryTwoHours(tx, access, patientId, row.entryId, copy.id);
  return copy.id;
};

type MorningRow = typeof morning.$inferSelect;

/** Stores a morning anew as the copy says, with the answers about each joint; the new id. */
export const insertCopy = async (tx: Db, from: MorningRow, copy: MorningRow): Promise<string> => {
  await tx.insert(morning).values(copy);
  const joints = await tx.select().from(morningJoint).where(eq(morningJoint.morningId, from.id));
  if (joints.length > 0)
    await tx.insert(morningJoint).values(joints.map((joint) => ({ ...joint, morningId: copy.id })));
  return copy.id;
};

const copyMorning = async (tx: Db, access: Access, patientId: string, id: string): Promise<string | null> => {
  const [row] = await tx
    .select()
    .from(morning)
    .where(and(eq(morning.clinicId, access.clinicId), eq(morning.patientId, patientId), eq(morning.id, id)));
  if (!row?.clockDoubtful) return null;
  return insertCopy(tx, row, confirmed(row, access));
};

/** False when there is no such entry, or its clock is not in doubt. */
export const confirmEntry = (
  access: Access,
  patientId: string,
  kind: 'session' | 'morning',
  id: string,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const copy =
      kind === 'session'
        ? await copySession(tx, access, patientId, id)
        : await copyMorning(tx, access, patientId, id);
    if (!copy) return false;
    changed(access, patientId);
    await auditWrite(tx, access, `${kind}-confirmed`, { subjectId: copy, patientId });
    // A clinician has looked: what the doubt held back need not be acknowledged once more.
    await evaluateRecord(access, patientId, {
      cause: 'clinician',
      sessionId: kind === 'session' ? copy : null,
      morningId: kind === 'morning' ? copy : null,
    });
    return true;
  });

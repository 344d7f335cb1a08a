/** The decisions that can speak for a joint now; what only a replay needs is left in the file. */
import { and, asc, desc, eq, inArray, max, sql } from 'drizzle-orm';
import { alias, unionAll } from 'drizzle-orm/sqlite-core';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { decision, decisionResponse } from '../schema/schema.ts';
import type { Decision } from './decisions.ts';

const named = (name: string) => alias(decision, name) as unknown as typeof decision;

/** Of a decision after an amendment, the last before it that follows none. */
const decisionBefore = (db: Db, amended: typeof decision) => {
  const before = named('before_it');
  return db
    .select({ id: before.id })
    .from(before)
    .where(
      and(
        eq(before.patientId, amended.patientId),
        eq(before.joint, amended.joint),
        sql`${before.evaluatedAt} < ${amended.evaluatedAt}`,
        sql`${before.cause} <> 'amendment'`,
      ),
    )
    .orderBy(desc(before.evaluatedAt))
    .limit(1);
};

/**
 * Newest of each joint, every pause, every one a clinician has answered, every one after an amendment and
 * the one each of those came after; few, however long the record is.
 */
export const candidateRows = patientQuery((db) => {
  const [pause, newest, older] = [named('pause'), named('newest'), named('older')];
  const amended = named('amended');
  const afterAmendment = and(ofPatient(amended), sql`${amended.cause} = 'amendment'`);
  const lastOfJoint = db
    .select({ joint: older.joint, at: max(older.evaluatedAt) })
    .from(older)
    .where(ofPatient(older))
    .groupBy(older.joint);
  const ids = unionAll(
    db
      .select({ id: pause.id })
      .from(pause)
      .where(and(ofPatient(pause), eq(pause.decision, 'pause'))),
    db.select({ id: decisionResponse.decisionId }).from(decisionResponse).where(ofPatient(decisionResponse)),
    db.select({ id: amended.id }).from(amended).where(afterAmendment),
    db
      .select({ id: sql<string>`(${decisionBefore(db, amended)})` })
      .from(amended)
      .where(afterAmendment),
    db
      .select({ id: newest.id })
      .from(newest)
      .where(and(ofPatient(newest), sql`(${newest.joint}, ${newest.evaluatedAt}) IN ${lastOfJoint}`)),
  );
  return db
    .select({
      id: decision.id,
      joint: decision.joint,
      sessionId: decision.sessionId,
      morningId: decision.morningId,
      cause: decision.cause,
      evaluatedAt: decision.evaluatedAt,
      day: decision.day,
      decision: decision.decision,
      largestStep: decision.largestStep,
      today: decision.today,
      contact: decision.contact,
      reasons: decision.reasons,
    })
    .from(decision)
    .where(and(ofPatient(decision), inArray(decision.id, ids)))
    .orderBy(asc(decision.evaluatedAt), asc(decision.id));
});

export type CandidateDecision = Omit<Decision, 'engineVersion'>;

/** Oldest first, without what is only needed to replay them. */
export const candidateDecisions = async (
  access: Access,
  patientId: string,
): Promise<readonly CandidateDecision[]> => {
  const rows = await candidateRows(access, patientId);
  return rows.map((row) => ({ ...row, joint: row.joint as Joint }));
};

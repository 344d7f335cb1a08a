/** The decisions that can speak for a joint now; what only a replay needs is left in the file. */
import { and, asc, inArray, max, sql } from 'drizzle-orm';
import { alias, unionAll } from 'drizzle-orm/sqlite-core';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { decision, decisionResponse } from '../schema/schema.ts';
import type { Decision } from './decisions.ts';

const named = (name: string) => alias(decision, name) as unknown as typeof decision;

/**
 * Newest of each joint and the newest before any answer was corrected, every one made after a correction,
 * every pause, and every one a clinician has answered; few, however long the record is.
 */
const candidateRows = patientQuery((db) => {
  const [pause, newest, older] = [named('pause'), named('newest'), named('older')];
  const [uncorrected, before] = [named('uncorrected'), named('before')];
  const lastOfJoint = db
    .select({ joint: older.joint, at: max(older.evaluatedAt) })
    .from(older)
    .where(ofPatient(older))
    .groupBy(older.joint);
  const lastUncorrected = db
    .select({ joint: before.joint, at: max(before.evaluatedAt) })
    .from(before)
    .where(and(ofPatient(before), sql`${before.cause} <> 'amendment'`))
    .groupBy(before.joint);
  const ids = unionAll(
    db
      .select({ id: pause.id })
      .from(pause)
      .where(and(ofPatient(pause), sql`(${pause.decision} = 'pause' OR ${pause.cause} = 'amendment')`)),
    db.select({ id: decisionResponse.decisionId }).from(decisionResponse).where(ofPatient(decisionResponse)),
    db
      .select({ id: newest.id })
      .from(newest)
      .where(and(ofPatient(newest), sql`(${newest.joint}, ${newest.evaluatedAt}) IN ${lastOfJoint}`)),
    db
      .select({ id: uncorrected.id })
      .from(uncorrected)
      .where(
        and(
          ofPatient(uncorrected),
          sql`(${uncorrected.joint}, ${uncorrected.evaluatedAt}) IN ${lastUncorrected}`,
        ),
      ),
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

/** What stands for each joint of a patient today: the engine's word, a clinician's, or an open pause. */
import { and, asc, eq } from 'drizzle-orm';
import { addDays } from '#core/day.ts';
import { type Standing, standingAnswers } from '#core/engine/standing.ts';
import type { Joint } from '#core/joints.ts';
import type { Access } from './access.ts';
import { type Decision, decisionFrom, decisionsOf, responsesOf } from './decisions.ts';
import { decision } from './schema/schema.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

/** Days back in which the newest decision of a joint still speaks. */
const speaksForDays = 120;

const pauseRows = patientQuery((db) =>
  db
    .select()
    .from(decision)
    .where(and(ofPatient(decision), eq(decision.decision, 'pause')))
    .orderBy(asc(decision.evaluatedAt)),
);

/** Pauses of any age: one that nobody has overruled still stands. */
const pausesOf = async (access: Access, patientId: string): Promise<readonly Decision[]> => {
  const rows = await pauseRows(access, patientId);
  return rows.map(decisionFrom);
};

export const standingOf = async (
  access: Access,
  patientId: string,
): Promise<ReadonlyMap<Joint, Standing>> => {
  const since = addDays(access.day, -speaksForDays);
  const recent = await decisionsOf(access, patientId, since);
  const known = new Set(recent.map((row) => row.id));
  const older = (await pausesOf(access, patientId)).filter((row) => !known.has(row.id));
  return standingAnswers([...older, ...recent], await responsesOf(access, patientId), access.day);
};

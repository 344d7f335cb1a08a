/** Goals of a patient, each step an append-only row. */
import { asc } from 'drizzle-orm';
import { asCorrected } from '#core/corrections/correction.ts';
import type { GoalStep } from '#core/episode/goals.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { goalStep } from '../schema/schema.ts';

const steps = patientQuery((db) =>
  db.select().from(goalStep).where(ofPatient(goalStep)).orderBy(asc(goalStep.recordedAt), asc(goalStep.id)),
);

export type RecordedGoalStep = GoalStep & { readonly id: string };

/** All of them as recorded, oldest first, those entered in error as well. */
export const goalStepsOnRecord = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedGoalStep[]> =>
  (await steps(access, patientId)).map(({ id, goal, state, byDay, note, recordedAt, byName }) => ({
    id,
    goal,
    state,
    byDay,
    note,
    recordedAt,
    byName,
  }));

/** Oldest first; a step that corrects another stands in its place. */
export const goalStepsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedGoalStep[]> => {
  const index = await correctionIndexFor(access, patientId);
  const counted = asCorrected(await goalStepsOnRecord(access, patientId), index);
  return counted.toSorted((a, b) => index.saidAt(a) - index.saidAt(b));
};

export const recordGoalStep = (
  access: Access,
  patientId: string,
  row: Pick<GoalStep, 'goal' | 'state' | 'byDay' | 'note'>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(goalStep).values({ ...now, ...row, goal: row.goal.trim() });
    await auditWrite(tx, access, 'goal', { subjectId: now.id, patientId, detail: { state: row.state } });
    return now.id;
  });

/** Goals of a patient, each step an append-only row. */
import { asc } from 'drizzle-orm';
import type { GoalStep } from '#core/episode/goals.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { goalStep } from '../schema/schema.ts';

const steps = patientQuery((db) =>
  db.select().from(goalStep).where(ofPatient(goalStep)).orderBy(asc(goalStep.recordedAt), asc(goalStep.id)),
);

/** Oldest first. */
export const goalStepsOf = async (access: Access, patientId: string): Promise<readonly GoalStep[]> =>
  (await steps(access, patientId)).map(({ goal, state, byDay, note, recordedAt, byName }) => ({
    goal,
    state,
    byDay,
    note,
    recordedAt,
    byName,
  }));

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

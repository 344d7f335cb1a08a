/** What a patient saw of fingers or toes after a cuff, newest day first. */
import { and, desc, gte, sql } from 'drizzle-orm';
import type { LimbCheck } from '#core/prescribing/occlusion/limb-check.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { trainingSession } from '../schema/schema.ts';

export interface LimbCheckOnDay extends LimbCheck {
  readonly sessionId: string;
  readonly day: Day;
}

/** The literal lets the file use the index that holds such sessions alone. */
const looked = patientQuery((db) =>
  db
    .select({
      sessionId: trainingSession.id,
      day: trainingSession.day,
      checks: trainingSession.limbChecks,
    })
    .from(trainingSession)
    .where(
      and(
        ofPatient(trainingSession),
        gte(trainingSession.day, sql.placeholder('since')),
        sql`${trainingSession.limbChecks} IS NOT NULL`,
      ),
    )
    .orderBy(desc(trainingSession.day), desc(trainingSession.beganAt)),
);

/** Of the sessions of a record, which holds none that was amended. */
export const limbChecksOf = async (
  access: Access,
  { patientId, sessions }: Pick<PatientRecord, 'patientId' | 'sessions'>,
  since: Day,
): Promise<readonly LimbCheckOnDay[]> => {
  const current = new Set(sessions.map(({ id }) => id));
  const rows = await looked(access, patientId, { since });
  return rows
    .filter(({ sessionId }) => current.has(sessionId))
    .flatMap(({ sessionId, day, checks }) => (checks ?? []).map((check) => ({ ...check, sessionId, day })));
};

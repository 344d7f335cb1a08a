/** What a patient saw of fingers or toes after a cuff, newest day first. An entry that was amended is left out. */
import { and, desc, gte, sql } from 'drizzle-orm';
import type { Day } from '#core/day.ts';
import type { LimbCheck } from '#core/occlusion/limb-check.ts';
import type { Access } from './access.ts';
import { trainingSession } from './schema/schema.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

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
        sql`NOT EXISTS (SELECT 1 FROM training_session later WHERE later.patient_id = ${trainingSession.patientId} AND later.amends = ${trainingSession.entryId})`,
      ),
    )
    .orderBy(desc(trainingSession.day), desc(trainingSession.beganAt)),
);

export const limbChecksOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly LimbCheckOnDay[]> =>
  (await looked(access, patientId, { since })).flatMap(({ sessionId, day, checks }) =>
    (checks ?? []).map((check) => ({ ...check, sessionId, day })),
  );

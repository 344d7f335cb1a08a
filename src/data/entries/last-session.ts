/** The newest day on which a set was done. A session given up before its first set is no session. */
import { and, desc, eq, exists } from 'drizzle-orm';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { setLog, trainingSession } from '../schema/schema.ts';

export const newestSessionDay = patientQuery((db) =>
  db
    .select({ day: trainingSession.day })
    .from(trainingSession)
    .where(
      and(
        ofPatient(trainingSession),
        exists(
          db
            .select({ id: setLog.id })
            .from(setLog)
            .where(
              and(eq(setLog.patientId, trainingSession.patientId), eq(setLog.sessionId, trainingSession.id)),
            ),
        ),
      ),
    )
    .orderBy(desc(trainingSession.day))
    .limit(1),
);

export const lastSessionOn = async (access: Access, patientId: string): Promise<Day | null> =>
  (await newestSessionDay(access, patientId))[0]?.day ?? null;

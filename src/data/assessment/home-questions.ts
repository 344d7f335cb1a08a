/** Who is asked to answer at home: a row as a clinician asked it, and one where it ended. */
import { asc, eq } from 'drizzle-orm';
import type { Rhythm } from '#core/assessment/questionnaires/home-questions.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { homeQuestions, homeQuestionsEnd } from '../schema/schema.ts';

export interface HomeQuestions extends Rhythm {
  readonly id: string;
  /** null = the activities the person chose. */
  readonly questionnaireId: string | null;
  readonly recordedAt: number;
  readonly byName: string;
  readonly ended: { readonly at: number; readonly by: string } | null;
}

const askedRows = patientQuery((db) =>
  db
    .select()
    .from(homeQuestions)
    .leftJoin(homeQuestionsEnd, eq(homeQuestionsEnd.homeQuestionsId, homeQuestions.id))
    .where(ofPatient(homeQuestions))
    .orderBy(asc(homeQuestions.recordedAt), asc(homeQuestions.id)),
);

/** Oldest first, ended ones among them. */
export const homeQuestionsOf = async (access: Access, patientId: string): Promise<readonly HomeQuestions[]> =>
  (await askedRows(access, patientId)).map(({ home_questions: row, home_questions_end: end }) => ({
    id: row.id,
    questionnaireId: row.questionnaireId,
    fromDay: row.fromDay,
    everyDays: row.everyDays,
    recordedAt: row.recordedAt,
    byName: row.byName,
    ended: end ? { at: end.recordedAt, by: end.byName } : null,
  }));

/** null where the same is asked already. */
export const askAtHome = (
  access: Access,
  patientId: string,
  row: Rhythm & Pick<HomeQuestions, 'questionnaireId'>,
): Promise<string | null> =>
  access.store.write(async (tx) => {
    const isAsked = (await homeQuestionsOf(access, patientId)).some(
      ({ questionnaireId, ended }) => questionnaireId === row.questionnaireId && !ended,
    );
    if (isAsked) return null;
    const now = writtenNow(access, patientId);
    const { questionnaireId, fromDay, everyDays } = row;
    await tx.insert(homeQuestions).values({ ...now, questionnaireId, fromDay, everyDays });
    await auditWrite(tx, access, 'home-questions', { subjectId: now.id, patientId, detail: { everyDays } });
    return now.id;
  });

/** False where this person is not asked it, or no longer. */
export const endHomeQuestions = (access: Access, patientId: string, id: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const isRunning = (await homeQuestionsOf(access, patientId)).some((row) => row.id === id && !row.ended);
    if (!isRunning) return false;
    const { id: _, ...now } = writtenNow(access, patientId);
    await tx.insert(homeQuestionsEnd).values({ homeQuestionsId: id, ...now });
    await auditWrite(tx, access, 'home-questions-end', { subjectId: id, patientId });
    return true;
  });

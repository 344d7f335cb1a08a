/** A clinic's own questionnaires. Each change is a new version; answers keep the one they were given to. */
import { randomUUID } from 'node:crypto';
import { asc } from 'drizzle-orm';
import type { Questionnaire } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { questionnaireRetirement, questionnaireVersion } from '../schema/schema.ts';

export interface QuestionnaireVersion extends Questionnaire {
  readonly questionnaireId: string;
  readonly version: number;
  readonly recordedAt: number;
  readonly byName: string;
}

const versionRows = prepared((db) =>
  db
    .select()
    .from(questionnaireVersion)
    .where(ofClinic(questionnaireVersion))
    .orderBy(asc(questionnaireVersion.recordedAt), asc(questionnaireVersion.version)),
);

const retiredRows = prepared((db) =>
  db.select().from(questionnaireRetirement).where(ofClinic(questionnaireRetirement)),
);

type Asking = Pick<Access, 'store' | 'clinicId'>;

/** Every version there ever was, oldest first. */
export const questionnaireVersionsOf = async ({
  store,
  clinicId,
}: Asking): Promise<readonly QuestionnaireVersion[]> =>
  (await versionRows(store.read, { clinicId })).map(
    ({ questionnaireId, version, title, questions, recordedAt, byName }) => ({
      questionnaireId,
      version,
      title,
      questions,
      recordedAt,
      byName,
    }),
  );

export interface OwnQuestionnaire extends QuestionnaireVersion {
  readonly retired: { readonly at: number; readonly by: string } | null;
}

/** The newest version of each, in the order in which they were first written. */
export const questionnairesOf = async (access: Asking): Promise<readonly OwnQuestionnaire[]> => {
  const newest = new Map(
    (await questionnaireVersionsOf(access)).map((row) => [row.questionnaireId, row] as const),
  );
  const rows = await retiredRows(access.store.read, { clinicId: access.clinicId });
  const retired = new Map(rows.map((row) => [row.questionnaireId, row]));
  return [...newest.values()].map((row) => {
    const end = retired.get(row.questionnaireId);
    return { ...row, retired: end ? { at: end.recordedAt, by: end.byName } : null };
  });
};

/** Without an id a new questionnaire, else its next version; null where it is not there or is retired. */
export const writeQuestionnaire = (
  access: Access,
  id: string | null,
  { title, questions }: Questionnaire,
): Promise<{ readonly questionnaireId: string; readonly version: number } | null> =>
  access.store.write(async (tx) => {
    const before = (await questionnairesOf(access)).find((row) => row.questionnaireId === id);
    if (id !== null && (!before || before.retired)) return null;
    const questionnaireId = id ?? randomUUID();
    const version = (before?.version ?? 0) + 1;
    const { clinicId, now: recordedAt, actorId: recordedBy, actorName: byName } = access;
    await tx.insert(questionnaireVersion).values({
      id: randomUUID(),
      clinicId,
      recordedAt,
      recordedBy,
      byName,
      questionnaireId,
      version,
      title,
      questions,
    });
    const detail = { version, questions: questions.length };
    await auditWrite(tx, access, 'questionnaire', { subjectId: questionnaireId, detail });
    return { questionnaireId, version };
  });

/** False where it is not there or is retired already. */
export const retireQuestionnaire = (access: Access, questionnaireId: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const known = await questionnairesOf(access);
    if (!known.some((row) => row.questionnaireId === questionnaireId && !row.retired)) return false;
    const { clinicId, now: recordedAt, actorId: recordedBy, actorName: byName } = access;
    await tx
      .insert(questionnaireRetirement)
      .values({ questionnaireId, clinicId, recordedAt, recordedBy, byName });
    await auditWrite(tx, access, 'questionnaire-retired', { subjectId: questionnaireId });
    return true;
  });

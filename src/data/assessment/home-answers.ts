/** What a person answered at home. Activities they chose become measurements; the rules read none of it. */
import { hash } from 'node:crypto';
import { asc } from 'drizzle-orm';
import type { OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import { asCorrected } from '#core/corrections/correction.ts';
import type { Carer } from '#core/record/entry-words.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { homeAnswers } from '../schema/schema.ts';
import { recordMeasurement } from './measurements.ts';

interface Given {
  readonly question: string;
  readonly answer: OwnAnswer;
}

export interface HomeAnswers {
  readonly homeQuestionsId: string;
  readonly entryId: string;
  /** null = the activities the person chose. */
  readonly version: number | null;
  readonly day: Day;
  readonly answers: readonly Given[];
  /** null = the patient typed. */
  readonly enteredAs: Carer | null;
}

const answerRows = patientQuery((db) =>
  db
    .select()
    .from(homeAnswers)
    .where(ofPatient(homeAnswers))
    .orderBy(asc(homeAnswers.day), asc(homeAnswers.recordedAt)),
);

/** Oldest first, those entered in error as well. */
export const homeAnswersOnRecord = (access: Access, patientId: string) => answerRows(access, patientId);

/** Oldest first: all that were sent, and those that stand as corrected. */
export const homeAnswersRead = async (access: Access, patientId: string) => {
  const known = await homeAnswersOnRecord(access, patientId);
  return { known, standing: asCorrected(known, await correctionIndexFor(access, patientId)) };
};

/** Once for each id, however often it is sent; what says something else under the same id is not taken. */
export const storeHomeAnswers = (
  access: Access,
  patientId: string,
  row: HomeAnswers,
): Promise<'stored' | 'known' | 'conflict'> =>
  access.store.write(async (tx) => {
    const digest = hash('sha256', JSON.stringify([row.homeQuestionsId, row.version, row.answers]));
    const before = (await homeAnswersOnRecord(access, patientId)).find(
      ({ entryId }) => entryId === row.entryId,
    );
    if (before) return before.digest === digest ? 'known' : 'conflict';
    const now = writtenNow(access, patientId);
    await tx.insert(homeAnswers).values({ ...now, ...row, digest });
    const { day, version, answers } = row;
    await auditWrite(tx, access, 'home-answers', {
      subjectId: now.id,
      patientId,
      detail: { answers: answers.length },
    });
    if (version !== null) return 'stored';
    for (const { question: activity, answer: score } of answers)
      if (typeof score === 'number')
        await recordMeasurement(
          access,
          patientId,
          { kind: 'patient-chosen-activity', day, activity, score },
          false,
          { homeAnswersId: now.id },
        );
    return 'stored';
  });

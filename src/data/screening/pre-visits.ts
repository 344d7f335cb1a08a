/** Questions answered on the phone before a visit. */
import { desc } from 'drizzle-orm';
import type { PreVisit } from '#core/screening/pre-visit.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { preVisit } from '../schema/care.ts';

export interface RecordedPreVisit extends PreVisit {
  readonly id: string;
  readonly sheetVersion: string;
  readonly recordedAt: number;
}

export const newestPreVisitRow = patientQuery((db) =>
  db
    .select()
    .from(preVisit)
    .where(ofPatient(preVisit))
    .orderBy(desc(preVisit.recordedAt), desc(preVisit.id))
    .limit(1),
);

export const newestPreVisit = async (access: Access, patientId: string): Promise<RecordedPreVisit | null> => {
  const [row] = await newestPreVisitRow(access, patientId);
  if (!row) return null;
  const { id, day, sheetVersion, answers, recordedAt } = row;
  return { id, day, sheetVersion, answers, recordedAt };
};

export const recordPreVisit = (
  access: Access,
  patientId: string,
  sheet: { readonly sheetVersion: string; readonly answers: readonly ScreeningItemAnswer[] },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(preVisit).values({ ...now, day: access.day, ...sheet });
    changed(access, patientId);
    await auditWrite(tx, access, 'pre-visit', {
      subjectId: now.id,
      patientId,
      detail: { items: sheet.answers.length },
    });
    return now.id;
  });

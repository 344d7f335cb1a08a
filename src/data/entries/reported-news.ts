/** The newest session before which a patient said that something was new, until the screening is asked again. */
import { and, desc, eq, sql } from 'drizzle-orm';
import type { ReportedNews } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { trainingSession } from '../schema/schema.ts';
import { newestScreening } from '../screening/screenings.ts';
import { lastAskedOfClinic } from '../worklist/last-asked.ts';

const columns = {
  patientId: trainingSession.patientId,
  at: trainingSession.arrivedAt,
  news: trainingSession.news,
  otherJointWorse: trainingSession.otherJointWorse,
};

type Row = Pick<typeof trainingSession.$inferSelect, 'news' | 'otherJointWorse'> & { readonly at: number };

const told = (row: Row | undefined, screenedAt: number | null): ReportedNews | null =>
  row && (screenedAt ?? 0) <= row.at
    ? { at: row.at, news: row.news ?? [], otherJointWorse: row.otherJointWorse === true }
    : null;

/** The literal lets the file use the index that holds such sessions alone. */
export const newestReported = patientQuery((db) =>
  db
    .select(columns)
    .from(trainingSession)
    .where(and(ofPatient(trainingSession), sql`${trainingSession.reportedNew} = 1`))
    .orderBy(desc(trainingSession.arrivedAt))
    .limit(1),
);

export const reportedNewsOf = async (access: Access, patientId: string): Promise<ReportedNews | null> => {
  const [row] = await newestReported(access, patientId);
  if (!row) return null;
  return told(row, (await newestScreening(access, patientId))?.recordedAt ?? null);
};

/** The same for every patient of a clinic at once, by patient id; those with nothing are left out. */
export const reportedNewsOfAll = async (access: Access): Promise<ReadonlyMap<string, ReportedNews>> => {
  const { read } = access.store;
  const rows = await read
    .select(columns)
    .from(trainingSession)
    .where(and(eq(trainingSession.clinicId, access.clinicId), eq(trainingSession.reportedNew, true)))
    .orderBy(trainingSession.arrivedAt);
  const screened = await lastAskedOfClinic(access);
  const newest = new Map(rows.map((row) => [row.patientId, row]));
  return new Map(
    [...newest].flatMap(([id, row]) => {
      const found = told(row, screened.get(id)?.recordedAt ?? null);
      return found ? [[id, found] as const] : [];
    }),
  );
};

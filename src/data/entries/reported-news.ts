/** The newest session or morning in which a patient said that something was new, until the screening is asked again. */
import { and, desc, eq, sql } from 'drizzle-orm';
import type { ReportedNews } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { morning, trainingSession } from '../schema/schema.ts';
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

/** The newest morning on which a joint that is not followed was worse. */
export const newestOtherJoint = patientQuery((db) =>
  db
    .select({ at: morning.arrivedAt })
    .from(morning)
    .where(and(ofPatient(morning), sql`${morning.otherJoint} = 'worse'`))
    .orderBy(desc(morning.arrivedAt))
    .limit(1),
);

const fromMorning = (row: { readonly at: number } | undefined): Row | undefined =>
  row && { at: row.at, news: null, otherJointWorse: true };

/** The newer of the two; at the same instant what was told before a session says more. */
const newer = (session: Row | undefined, other: Row | undefined): Row | undefined =>
  session && (!other || session.at >= other.at) ? session : other;

export const reportedNewsOf = async (access: Access, patientId: string): Promise<ReportedNews | null> => {
  const [session] = await newestReported(access, patientId);
  const [other] = await newestOtherJoint(access, patientId);
  const row = newer(session, fromMorning(other));
  return row ? told(row, (await newestScreening(access, patientId))?.recordedAt ?? null) : null;
};

/** The same for every patient of a clinic at once, by patient id; those with nothing are left out. */
export const reportedNewsOfAll = async (access: Access): Promise<ReadonlyMap<string, ReportedNews>> => {
  const { read } = access.store;
  const rows = await read
    .select(columns)
    .from(trainingSession)
    .where(and(eq(trainingSession.clinicId, access.clinicId), eq(trainingSession.reportedNew, true)))
    .orderBy(trainingSession.arrivedAt);
  const others = await read
    .select({ patientId: morning.patientId, at: morning.arrivedAt })
    .from(morning)
    .where(and(eq(morning.clinicId, access.clinicId), sql`${morning.otherJoint} = 'worse'`))
    .orderBy(morning.arrivedAt);
  const screened = await lastAskedOfClinic(access);
  const sessions = new Map(rows.map((row) => [row.patientId, row]));
  const mornings = new Map(others.map((row) => [row.patientId, row]));
  return new Map(
    [...new Set([...sessions.keys(), ...mornings.keys()])].flatMap((id) => {
      const row = newer(sessions.get(id), fromMorning(mornings.get(id)));
      const found = told(row, screened.get(id)?.recordedAt ?? null);
      return found ? [[id, found] as const] : [];
    }),
  );
};

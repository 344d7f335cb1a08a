/** Screenings and clearances, as dated versions. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq } from 'drizzle-orm';
import type { Clearance, Screening, ScreeningItemAnswer } from '#core/model/screening.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { touchMatters } from './matters.ts';
import { clearance, screening } from './schema/schema.ts';

export interface RecordedScreening extends Screening {
  readonly id: string;
  readonly recordedAt: number;
}

export const screeningsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedScreening[]> => {
  const rows = await access.store.read
    .select()
    .from(screening)
    .where(and(eq(screening.clinicId, access.clinicId), eq(screening.patientId, patientId)))
    .orderBy(desc(screening.version));
  return rows.map(({ id, version, sheetVersion, day, answers, recordedAt }) => ({
    id,
    version,
    sheetVersion,
    day,
    answers,
    recordedAt,
  }));
};

export const newestScreening = async (access: Access, patientId: string): Promise<RecordedScreening | null> =>
  (await screeningsOf(access, patientId))[0] ?? null;

export const recordScreening = (
  access: Access,
  patientId: string,
  sheet: { readonly sheetVersion: string; readonly answers: readonly ScreeningItemAnswer[] },
): Promise<number> =>
  access.store.write(async (tx) => {
    const [last] = await tx
      .select({ version: screening.version })
      .from(screening)
      .where(and(eq(screening.clinicId, access.clinicId), eq(screening.patientId, patientId)))
      .orderBy(desc(screening.version))
      .limit(1);
    const version = (last?.version ?? 0) + 1;
    const id = randomUUID();
    await tx.insert(screening).values({
      id,
      clinicId: access.clinicId,
      patientId,
      version,
      day: access.day,
      sheetVersion: sheet.sheetVersion,
      answers: sheet.answers,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    const items = sheet.answers.map((row) => row.item);
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'screening',
      subjectId: id,
      patientId,
      detail: { version, items: items.length },
    });
    return version;
  });

export const clearancesOf = async (access: Access, patientId: string): Promise<readonly Clearance[]> => {
  const rows = await access.store.read
    .select()
    .from(clearance)
    .where(and(eq(clearance.clinicId, access.clinicId), eq(clearance.patientId, patientId)))
    .orderBy(asc(clearance.recordedAt));
  return rows.map(({ method, limb, side, closings, reason, byName, day }) => ({
    method,
    limb,
    side,
    closings,
    reason,
    by: byName,
    day,
  }));
};

export const recordClearance = (
  access: Access,
  patientId: string,
  row: Pick<Clearance, 'method' | 'limb' | 'side' | 'closings' | 'reason'>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(clearance).values({
      id,
      clinicId: access.clinicId,
      patientId,
      ...row,
      day: access.day,
      byName: access.actorName,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    await sealed(tx, access, {
      act: 'write',
      subject: 'clearance',
      subjectId: id,
      patientId,
      detail: { method: row.method, closings: row.closings },
    });
    return id;
  });

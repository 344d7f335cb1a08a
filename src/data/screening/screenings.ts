/** Screenings and clearances, as dated versions. */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq } from 'drizzle-orm';
import { asCorrected, type CorrectionIndex, readings } from '#core/corrections/correction.ts';
import { stricterScreening } from '#core/corrections/stricter.ts';
import { nextScreening } from '#core/screening/changed-answers.ts';
import type { Clearance, Screening, ScreeningItemAnswer } from '#core/screening/screening.ts';
import { ageYears, type Day } from '#core/time/day.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { clearance, screening } from '../schema/schema.ts';

export interface RecordedScreening extends Screening {
  readonly id: string;
  readonly recordedAt: number;
}

export const screeningRows = patientQuery((db) =>
  db.select().from(screening).where(ofPatient(screening)).orderBy(desc(screening.version)),
);

const screeningFrom = ({
  id,
  version,
  sheetVersion,
  day,
  answers,
  recordedAt,
}: typeof screening.$inferSelect): RecordedScreening => ({
  id,
  version,
  sheetVersion,
  day,
  answers,
  recordedAt,
});

/** All of them as recorded, newest first, those entered in error as well. */
export const screeningsOnRecord = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedScreening[]> => (await screeningRows(access, patientId)).map(screeningFrom);

type Asked = Pick<RecordedScreening, 'id' | 'version' | 'day' | 'recordedAt'>;

/** Newest first by when they were asked: one that corrects another was asked when the other was. */
const byAsking = <S extends Asked>(rows: readonly S[], index: CorrectionIndex): readonly S[] =>
  rows
    .map((row) => ({ ...row, recordedAt: index.saidAt(row) }))
    .toSorted((a, b) => b.recordedAt - a.recordedAt || b.version - a.version);

/** As corrected, newest first. */
export const screeningsOf = async (
  access: Access,
  patientId: string,
): Promise<readonly RecordedScreening[]> => {
  const index = await correctionIndexFor(access, patientId);
  return byAsking(asCorrected(await screeningsOnRecord(access, patientId), index), index);
};

/** The newest of each reading; two where a correction waits, null where one leaves none. */
export const newestOfReadings = <S extends Asked>(
  rows: readonly S[],
  index: CorrectionIndex,
): readonly (S | null)[] => [
  ...new Set(readings(byAsking(rows, index), index).map(([newest]) => newest ?? null)),
];

/** The screenings that close and open now: one, or each of those between which a correction waits. */
export const screeningsInForce = async (
  access: Access,
  patientId: string,
): Promise<readonly (RecordedScreening | null)[]> =>
  newestOfReadings(await screeningsOnRecord(access, patientId), await correctionIndexFor(access, patientId));

/** While a correction waits, the stricter of both readings. */
export const strictestOf = (all: readonly (RecordedScreening | null)[]): RecordedScreening | null =>
  all.reduce((one, other) => (one && other ? stricterScreening(one, other) : null));

/** What counts as screened now; while a correction waits, the stricter of both. */
export const newestScreening = async (access: Access, patientId: string): Promise<RecordedScreening | null> =>
  strictestOf(await screeningsInForce(access, patientId));

interface Sheet {
  readonly sheetVersion: string;
  readonly answers: readonly ScreeningItemAnswer[];
}

export const recordScreening = (
  access: Access,
  patientId: string,
  sheet: Sheet & { readonly day?: Day; readonly changed?: readonly string[] },
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
      ...recordedFor(access, patientId),
      version,
      day: sheet.day ?? access.day,
      sheetVersion: sheet.sheetVersion,
      answers: sheet.answers,
    });
    const items = sheet.answers.map((row) => row.item);
    changed(access, patientId);
    await auditWrite(tx, access, 'screening', {
      subjectId: id,
      patientId,
      detail: { version, items: items.length, ...(sheet.changed ? { changed: sheet.changed } : {}) },
    });
    return version;
  });

/** Some answers beside those on record, as the next version; the items whose answer is another one than before. */
export const recordAnswers = (
  access: Access,
  { id: patientId, birthDay }: { readonly id: string; readonly birthDay: Day },
  sheet: Sheet,
  isAskedAnew = false,
): Promise<readonly string[]> =>
  access.store.write(async () => {
    const before = await newestScreening(access, patientId);
    const next = nextScreening(before, sheet, access.day, ageYears(birthDay, access.day), isAskedAnew);
    if (isAskedAnew || next.changed.length > 0 || next.day !== before?.day)
      await recordScreening(access, patientId, next);
    return next.changed;
  });

export const clearanceRows = patientQuery((db) =>
  db.select().from(clearance).where(ofPatient(clearance)).orderBy(asc(clearance.recordedAt)),
);

/** All of them as recorded, oldest first, those entered in error as well. */
export const clearancesOnRecord = async (access: Access, patientId: string) =>
  (await clearanceRows(access, patientId)).map(
    ({ clinicId: _clinic, patientId: _patient, recordedBy: _by, byName, ...row }) => ({ ...row, by: byName }),
  );

export const clearancesOf = async (access: Access, patientId: string): Promise<readonly Clearance[]> =>
  asCorrected(await clearancesOnRecord(access, patientId), await correctionIndexFor(access, patientId));

export const recordClearance = (
  access: Access,
  patientId: string,
  row: Pick<Clearance, 'method' | 'limb' | 'side' | 'findings' | 'reason'>,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(clearance).values({
      id,
      ...recordedFor(access, patientId),
      ...row,
      day: access.day,
      byName: access.actorName,
    });
    changed(access, patientId);
    await auditWrite(tx, access, 'clearance', {
      subjectId: id,
      patientId,
      detail: { method: row.method, findings: row.findings },
    });
    return id;
  });

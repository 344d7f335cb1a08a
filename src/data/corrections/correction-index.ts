/** What became of each entry: the one place in which readers learn what to leave out. */
import { eq } from 'drizzle-orm';
import { type CorrectionIndex, type CorrectionMark, indexCorrections } from '#core/corrections/correction.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { correction, planSeen } from '../schema/schema.ts';

const columns = {
  id: correction.id,
  subjectId: correction.subjectId,
  replacedById: correction.replacedById,
  firstSaidAt: correction.firstSaidAt,
  waits: correction.waits,
  seenAt: planSeen.seenAt,
};

export const markRows = patientQuery((db) =>
  db
    .select(columns)
    .from(correction)
    .leftJoin(planSeen, eq(planSeen.correctionId, correction.id))
    .where(ofPatient(correction)),
);

type MarkRow = Awaited<ReturnType<typeof markRows>>[number];

const markFrom = (row: MarkRow, asSeen: Access['asSeen']): CorrectionMark => ({
  subjectId: row.subjectId,
  replacedById: row.replacedById,
  firstSaidAt: row.firstSaidAt,
  isWaiting: row.waits && row.seenAt === null && row.id !== asSeen,
});

const nothingCorrected = indexCorrections([]);

export const correctionIndexFor = async (access: Access, patientId: string): Promise<CorrectionIndex> => {
  const rows = await markRows(access, patientId);
  return rows.length === 0
    ? nothingCorrected
    : indexCorrections(rows.map((row) => markFrom(row, access.asSeen)));
};

/** The same for a whole clinic in one query; entries have ids of their own, so patients do not mix. */
export const correctionIndexOfClinic = async (access: Access): Promise<CorrectionIndex> => {
  const rows = await access.store.read
    .select(columns)
    .from(correction)
    .leftJoin(planSeen, eq(planSeen.correctionId, correction.id))
    .where(eq(correction.clinicId, access.clinicId));
  return indexCorrections(rows.map((row) => markFrom(row, access.asSeen)));
};

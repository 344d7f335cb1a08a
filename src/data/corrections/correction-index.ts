/** What became of each entry: the one place in which readers learn what to leave out. */
import { eq } from 'drizzle-orm';
import { type CorrectionIndex, type CorrectionMark, indexCorrections } from '#core/corrections/correction.ts';
import { type Access, knownBy } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { correction, planSeen } from '../schema/schema.ts';

const columns = {
  id: correction.id,
  subjectId: correction.subjectId,
  replacedById: correction.replacedById,
  firstSaidAt: correction.firstSaidAt,
  waits: correction.waits,
  correctedAt: correction.correctedAt,
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

type Reading = Pick<Access, 'asSeen' | 'knownAt'>;

const markFrom = (row: MarkRow, { asSeen, knownAt }: Reading): CorrectionMark => {
  const isSeen = row.seenAt !== null && (knownAt === undefined || row.seenAt <= knownAt);
  return {
    subjectId: row.subjectId,
    replacedById: row.replacedById,
    firstSaidAt: row.firstSaidAt,
    isWaiting: row.waits && !isSeen && row.id !== asSeen,
  };
};

const nothingCorrected = indexCorrections([]);

const indexFor = (rows: readonly MarkRow[], access: Reading): CorrectionIndex => {
  const known = knownBy<MarkRow>(access, ({ correctedAt }) => correctedAt)(rows);
  return known.length === 0 ? nothingCorrected : indexCorrections(known.map((row) => markFrom(row, access)));
};

export const correctionIndexFor = async (access: Access, patientId: string): Promise<CorrectionIndex> => {
  return indexFor(await markRows(access, patientId), access);
};

/** The same for a whole clinic in one query; entries have ids of their own, so patients do not mix. */
export const correctionIndexOfClinic = async (access: Access): Promise<CorrectionIndex> => {
  const rows = await access.store.read
    .select(columns)
    .from(correction)
    .leftJoin(planSeen, eq(planSeen.correctionId, correction.id))
    .where(eq(correction.clinicId, access.clinicId));
  return indexFor(rows, access);
};

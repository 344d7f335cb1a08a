/** Usual values of each joint as the rules read them. */
import { asc } from 'drizzle-orm';
import { asCorrected, type CorrectionIndex, readings } from '#core/corrections/correction.ts';
import { stricterBaseline } from '#core/corrections/stricter.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline } from '#core/record/record.ts';
import { type Access, knownRows } from '../access.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { baseline } from '../schema/schema.ts';

type Row = typeof baseline.$inferSelect;

const baselineRows = patientQuery((db) =>
  db.select().from(baseline).where(ofPatient(baseline)).orderBy(asc(baseline.recordedAt)),
);

const baselineFrom = (row: Row): Baseline => ({
  joint: row.joint as Joint,
  usualPain: row.usualPain,
  usualPainTop: row.usualPainTop,
  acceptablePainLimit: row.acceptablePainLimit,
  usualStiffnessMinutes: row.usualStiffnessMinutes,
  usualSwelling: row.usualSwelling,
  usualEffusion: row.usualEffusion,
  usualFatigue: row.usualFatigue,
  morningSpread: row.morningSpread,
  setOn: row.setOn,
  setBy: row.byName,
  dueForReview: row.dueForReview,
  ...(row.provisional ? { provisional: true } : {}),
  ...(row.tightenedFrom === null ? {} : { tightenedFrom: row.tightenedFrom }),
  ...(row.riseAcknowledged ? { riseAcknowledged: true } : {}),
});

/** All rows as recorded, those entered in error as well. */
export const baselineRowsOf = baselineRows;

/**
 * The engine marks a baseline as due for review, or follows better mornings, by a row of its own: such a row
 * goes with the one it came from.
 */
const withRepeats = (rows: readonly Row[], index: CorrectionIndex): readonly Row[] => {
  const struck = rows.filter((row) => index.stateOf(row.id) !== 'stands');
  const repeats = (row: Row, of: Row): boolean =>
    row.id !== of.id && row.joint === of.joint && (row.tightenedFrom === of.setOn || repeatsValues(row, of));
  const repeatsValues = (row: Row, of: Row): boolean =>
    row.dueForReview !== of.dueForReview &&
    row.setOn === of.setOn &&
    row.byName === of.byName &&
    row.usualPain === of.usualPain &&
    row.acceptablePainLimit === of.acceptablePainLimit;
  return rows.filter((row) => index.stateOf(row.id) !== 'stands' || !struck.some((of) => repeats(row, of)));
};

/** Newest last; one that corrects another stands in its place. While a correction waits, the stricter values of both. */
export const baselinesFrom = (all: readonly Row[], index: CorrectionIndex): readonly Baseline[] => {
  const rows = withRepeats(all, index).toSorted((a, b) => index.saidAt(a) - index.saidAt(b));
  const corrected = asCorrected(rows, index).map(baselineFrom);
  const others = readings(rows, index)
    .slice(0, -1)
    .map((reading) => reading.map(baselineFrom));
  return corrected.map((row, place) => {
    const isNewest = !corrected.some(({ joint }, later) => later > place && joint === row.joint);
    if (!isNewest) return row;
    return others
      .flatMap((reading) => reading.findLast(({ joint }) => joint === row.joint) ?? [])
      .filter((other) => JSON.stringify(other) !== JSON.stringify(row))
      .reduce(stricterBaseline, row);
  });
};

export const baselinesOf = async (access: Access, patientId: string): Promise<readonly Baseline[]> =>
  baselinesFrom(
    knownRows(access, await baselineRows(access, patientId)),
    await correctionIndexFor(access, patientId),
  );

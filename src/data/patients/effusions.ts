/** Tests for fluid in a knee as the rules read them. */
import { asc } from 'drizzle-orm';
import { asCorrected, inForce } from '#core/corrections/correction.ts';
import { worseEffusion } from '#core/corrections/stricter.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { EffusionRecord } from '#core/record/record.ts';
import { type Access, knownRows } from '../access.ts';
import { correctionIndexFor } from '../corrections/correction-index.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { effusionTest } from '../schema/schema.ts';

export const effusionRows = patientQuery((db) =>
  db
    .select({
      id: effusionTest.id,
      recordedAt: effusionTest.recordedAt,
      joint: effusionTest.joint,
      day: effusionTest.day,
      grade: effusionTest.grade,
    })
    .from(effusionTest)
    .where(ofPatient(effusionTest))
    .orderBy(asc(effusionTest.day), asc(effusionTest.recordedAt)),
);

type Test = EffusionRecord & { readonly id: string; readonly recordedAt: number };

/** All of them as recorded, oldest first, those entered in error as well. */
export const effusionsOnRecord = async (access: Access, patientId: string): Promise<readonly Test[]> =>
  knownRows(access, await effusionRows(access, patientId)).map((row) => ({
    ...row,
    joint: row.joint as Joint,
  }));

/**
 * Oldest first; one that corrects another stands in its place. While a correction waits, the worse of
 * both where they speak of the same joint and day, and otherwise both.
 */
export const effusionsOf = async (access: Access, patientId: string): Promise<readonly EffusionRecord[]> => {
  const index = await correctionIndexFor(access, patientId);
  const rows = await effusionsOnRecord(access, patientId);
  const unseen = inForce(rows, index).filter(({ id }) => index.isUnseen(id));
  const settled = asCorrected(rows, index).filter(({ id }) => !index.isUnseen(id));
  const worst = new Map<string, Test>();
  for (const row of unseen) {
    const of = `${row.joint} ${row.day}`;
    const known = worst.get(of);
    worst.set(of, known ? worseEffusion(known, row) : row);
  }
  return [...settled, ...worst.values()]
    .toSorted((a, b) => (a.day === b.day ? index.saidAt(a) - index.saidAt(b) : a.day < b.day ? -1 : 1))
    .map(({ joint, day, grade }) => ({ joint, day, grade }));
};

/** The entries of one morning that stand, for telling which of them a new answer replaces. */
import { and, eq, sql } from 'drizzle-orm';
import type { MorningRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { morning } from '../schema/schema.ts';

export interface MorningOfDay {
  readonly entryId: string;
  /** It replaces an earlier entry: between those two has been chosen. */
  readonly isAmendment: boolean;
  readonly record: MorningRecord;
}

const entriesOfDay = patientQuery((db) =>
  db
    .select({ id: morning.id, entryId: morning.entryId, amends: morning.amends })
    .from(morning)
    .where(and(ofPatient(morning), eq(morning.day, sql.placeholder('day')))),
);

/** Of records that stand, those of the day with their entries, in the order in which they arrived. */
export const morningsOfDay = async (
  access: Access,
  patientId: string,
  day: Day,
  standing: readonly MorningRecord[],
): Promise<readonly MorningOfDay[]> => {
  const ofDay = standing.filter((record) => record.day === day);
  if (ofDay.length === 0) return [];
  const rows = new Map((await entriesOfDay(access, patientId, { day })).map((row) => [row.id, row]));
  return ofDay
    .toSorted((a, b) => a.recordedAt - b.recordedAt)
    .flatMap((record) => {
      const row = rows.get(record.id);
      return row ? [{ entryId: row.entryId, isAmendment: row.amends !== null, record }] : [];
    });
};

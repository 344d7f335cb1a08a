/** The newest row of what the worklist asks by day, for a whole clinic in one query each. */
import { asc, eq, max, min, type SQL, sql } from 'drizzle-orm';
import type { SQLiteColumn, SQLiteTable } from 'drizzle-orm/sqlite-core';
import type { Access } from '../access.ts';
import {
  baseline,
  entryConflict,
  message,
  morning,
  patientMessage,
  reviewBooking,
} from '../schema/schema.ts';

/** Rows of one query by the patient they belong to. */
export const byPatient = <R extends { patientId: string }>(
  rows: readonly R[],
): ReadonlyMap<string, readonly R[]> => {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const known = groups.get(row.patientId);
    if (known) known.push(row);
    else groups.set(row.patientId, [row]);
  }
  return groups;
};

type Dated = SQLiteTable & { readonly clinicId: SQLiteColumn; readonly patientId: SQLiteColumn };

/** One figure of a table for each patient of the clinic, such as the newest day. */
const foldOf = async <V>(access: Access, table: Dated, value: SQL<V>): Promise<ReadonlyMap<string, V>> => {
  const rows = await access.store.read
    .select({ patientId: sql<string>`${table.patientId}`, value })
    .from(table)
    .where(eq(table.clinicId, access.clinicId))
    .groupBy(table.patientId);
  return new Map(rows.map((row) => [row.patientId, row.value as V]));
};

/** The newest of what is kept to a day, by patient. */
export const newestOf = async (access: Access) => ({
  baselines: byPatient(
    await access.store.read.select().from(baseline).where(eq(baseline.clinicId, access.clinicId)),
  ),
  mornings: await foldOf(access, morning, max(morning.day)),
  conflicts: await foldOf(access, entryConflict, min(entryConflict.arrivedAt)),
});

/** What was written and booked, by patient: newest message each way, and the day of the newest booking. */
export const correspondenceOf = async (access: Access) => {
  const bookings = await access.store.read
    .select({ patientId: reviewBooking.patientId, day: reviewBooking.day })
    .from(reviewBooking)
    .where(eq(reviewBooking.clinicId, access.clinicId))
    .orderBy(asc(reviewBooking.recordedAt), asc(reviewBooking.id));
  return {
    written: await foldOf(access, patientMessage, max(patientMessage.recordedAt)),
    writtenBack: await foldOf(access, message, max(message.sentAt)),
    booked: new Map(bookings.map(({ patientId, day }) => [patientId, day])),
  };
};

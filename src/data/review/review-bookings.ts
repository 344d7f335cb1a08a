/** The next review as booked; the newest row counts, and a row without a day takes a booking back. */
import { desc } from 'drizzle-orm';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { writtenNow } from '../episode/episodes.ts';
import { reviewBooking } from '../schema/schema.ts';

export interface Booking {
  readonly id: string;
  readonly day: Day;
  readonly time: string | null;
  readonly place: string | null;
  readonly byName: string;
}

const newest = patientQuery((db) =>
  db
    .select()
    .from(reviewBooking)
    .where(ofPatient(reviewBooking))
    .orderBy(desc(reviewBooking.recordedAt), desc(reviewBooking.id))
    .limit(1),
);

export const bookingOf = async (access: Access, patientId: string): Promise<Booking | null> => {
  const [row] = await newest(access, patientId);
  if (!row || row.day === null) return null;
  const { id, day, time, place, byName } = row;
  return { id, day, time, place, byName };
};

export const bookReview = (
  access: Access,
  patientId: string,
  row: { readonly day: Day | null; readonly time: string | null; readonly place: string | null },
): Promise<string> =>
  access.store.write(async (tx) => {
    const now = writtenNow(access, patientId);
    await tx.insert(reviewBooking).values({ ...now, ...row });
    changed(access, patientId);
    await auditWrite(tx, access, 'review-booking', { subjectId: now.id, patientId });
    return now.id;
  });

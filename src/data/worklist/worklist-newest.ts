/** The newest row of what the worklist asks by day, for a whole clinic in one query each. */
import { asc, eq, max, min } from 'drizzle-orm';
import type { Access } from '../access.ts';
import {
  baseline,
  entryConflict,
  message,
  morning,
  patientMessage,
  reviewBooking,
  screening,
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

const byId = <V>(rows: readonly { patientId: string; value: V }[]) =>
  new Map(rows.map((row) => [row.patientId, row.value]));

/** The newest of what is kept to a day, by patient. */
export const newestOf = async (access: Access) => {
  const { read } = access.store;
  const mine = access.clinicId;
  const baselines = byPatient(
    await read
      .select({ patientId: baseline.patientId, joint: baseline.joint, setOn: max(baseline.setOn) })
      .from(baseline)
      .where(eq(baseline.clinicId, mine))
      .groupBy(baseline.patientId, baseline.joint),
  );
  const mornings = byId(
    await read
      .select({ patientId: morning.patientId, value: max(morning.day) })
      .from(morning)
      .where(eq(morning.clinicId, mine))
      .groupBy(morning.patientId),
  );
  const screened = byId(
    await read
      .select({ patientId: screening.patientId, value: max(screening.day) })
      .from(screening)
      .where(eq(screening.clinicId, mine))
      .groupBy(screening.patientId),
  );
  const conflicts = byId(
    await read
      .select({ patientId: entryConflict.patientId, value: min(entryConflict.arrivedAt) })
      .from(entryConflict)
      .where(eq(entryConflict.clinicId, mine))
      .groupBy(entryConflict.patientId),
  );
  return { baselines, mornings, screened, conflicts };
};

/** What was written and booked, by patient: newest message each way, and the day of the newest booking. */
export const correspondenceOf = async (access: Access) => {
  const { read } = access.store;
  const mine = access.clinicId;
  const written = byId(
    await read
      .select({ patientId: patientMessage.patientId, value: max(patientMessage.recordedAt) })
      .from(patientMessage)
      .where(eq(patientMessage.clinicId, mine))
      .groupBy(patientMessage.patientId),
  );
  const writtenBack = byId(
    await read
      .select({ patientId: message.patientId, value: max(message.sentAt) })
      .from(message)
      .where(eq(message.clinicId, mine))
      .groupBy(message.patientId),
  );
  const booked = byId(
    await read
      .select({ patientId: reviewBooking.patientId, value: reviewBooking.day })
      .from(reviewBooking)
      .where(eq(reviewBooking.clinicId, mine))
      .orderBy(asc(reviewBooking.recordedAt), asc(reviewBooking.id)),
  );
  return { written, writtenBack, booked };
};

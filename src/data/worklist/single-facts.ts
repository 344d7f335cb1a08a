/** Dates and instants the worklist needs of a patient, each a single value, found in one statement. */
import { and, desc, eq, max, min, notExists, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import type { Day } from '#core/time/day.ts';
import type { Db } from '../database/connection.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import {
  clinic,
  entryConflict,
  message,
  morning,
  patientMessage,
  reviewBooking,
  trainingSession,
} from '../schema/schema.ts';

/**
 * First arrival of an entry whose clock is doubtful; amended ones no longer count. The literal lets the
 * file use the index that holds doubtful entries alone.
 */
const firstDoubtful = (db: Db, table: typeof trainingSession | typeof morning) => {
  const later = alias(table, 'later') as unknown as typeof table;
  const amended = db
    .select({ one: sql`1` })
    .from(later)
    .where(and(eq(later.patientId, table.patientId), eq(later.amends, table.entryId)));
  return db
    .select({ at: min(table.arrivedAt) })
    .from(table)
    .where(and(ofPatient(table), sql`${table.clockDoubtful} = 1`, notExists(amended)));
};

/** Single facts of a patient in one statement, each found by an index of its own. */
export const singleFacts = patientQuery((db) => {
  const answered = db
    .select({ at: max(morning.day) })
    .from(morning)
    .where(ofPatient(morning));
  const conflict = db
    .select({ at: min(entryConflict.arrivedAt) })
    .from(entryConflict)
    .where(ofPatient(entryConflict));
  const written = db
    .select({ at: max(patientMessage.recordedAt) })
    .from(patientMessage)
    .where(ofPatient(patientMessage));
  const answeredBack = db
    .select({ at: max(message.sentAt) })
    .from(message)
    .where(ofPatient(message));
  const booked = db
    .select({ day: reviewBooking.day })
    .from(reviewBooking)
    .where(ofPatient(reviewBooking))
    .orderBy(desc(reviewBooking.recordedAt), desc(reviewBooking.id))
    .limit(1);
  return db
    .select({
      zone: clinic.zone,
      lastMorning: sql<Day | null>`(${answered})`,
      conflictSince: sql<number | null>`(${conflict})`,
      doubtfulSession: sql<number | null>`(${firstDoubtful(db, trainingSession)})`,
      doubtfulMorning: sql<number | null>`(${firstDoubtful(db, morning)})`,
      wroteAt: sql<number | null>`(${written})`,
      answeredBackAt: sql<number | null>`(${answeredBack})`,
      reviewOn: sql<Day | null>`(${booked})`,
    })
    .from(clinic)
    .where(eq(clinic.id, sql.placeholder('clinicId')));
});

export const firstOf = (...instants: readonly (number | null | undefined)[]): number | null => {
  const known = instants.filter((at) => typeof at === 'number');
  return known.length > 0 ? Math.min(...known) : null;
};

/** When the newest message came that the clinic has not written back to since. */
export const unansweredSince = (wroteAt: number | null | undefined, backAt: number | null | undefined) =>
  typeof wroteAt === 'number' && wroteAt > (backAt ?? 0) ? wroteAt : null;

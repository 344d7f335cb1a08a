/** Sessions read back as they were sent: for the patient, who may put right what she sent today, and beside a correction. */
import { and, asc, eq, gte, inArray, isNotNull, or, sql } from 'drizzle-orm';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import { carers } from '#core/record/entry-words.ts';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import { sessionJoint, setLog, trainingSession } from '../schema/schema.ts';

export const sessionsSince = patientQuery((db) =>
  db
    .select()
    .from(trainingSession)
    .where(and(ofPatient(trainingSession), gte(trainingSession.day, sql.placeholder('since'))))
    .orderBy(asc(trainingSession.arrivedAt)),
);

/** Sessions that were put right and those they stand for; of all the others nothing is read. */
const correctedSince = patientQuery((db) => {
  const replaced = db
    .select({ entryId: trainingSession.amends })
    .from(trainingSession)
    .where(and(ofPatient(trainingSession), isNotNull(trainingSession.amends)));
  return db
    .select()
    .from(trainingSession)
    .where(
      and(
        ofPatient(trainingSession),
        gte(trainingSession.day, sql.placeholder('since')),
        or(isNotNull(trainingSession.amends), inArray(trainingSession.entryId, replaced)),
      ),
    )
    .orderBy(asc(trainingSession.arrivedAt));
});

const setsOf = patientQuery((db) =>
  db
    .select()
    .from(setLog)
    .where(and(ofPatient(setLog), eq(setLog.sessionId, sql.placeholder('sessionId'))))
    .orderBy(asc(setLog.setNumber)),
);

const jointsOf = patientQuery((db) =>
  db
    .select()
    .from(sessionJoint)
    .where(and(ofPatient(sessionJoint), eq(sessionJoint.sessionId, sql.placeholder('sessionId')))),
);

type Row = typeof trainingSession.$inferSelect;

/** What was left open comes back as left open, never as the answer that stands in its place. */
export const entryOf = async (access: Access, patientId: string, row: Row): Promise<SessionEntry> => {
  const sets = await setsOf(access, patientId, { sessionId: row.id });
  const joints = await jointsOf(access, patientId, { sessionId: row.id });
  const { format, entryId, day, zone, sentAt, redFlags, extraPainRelief, kind, beganAt, endedAt } = row;
  return {
    format,
    entryId,
    day,
    zone,
    sentAt,
    ...(row.amends === null ? {} : { amends: row.amends }),
    ...(row.enteredAs === null ? {} : { enteredAs: row.enteredAs }),
    redFlags: redFlags === null ? null : (redFlags as RedFlag[]),
    extraPainRelief,
    ...(row.signsAsked === null ? {} : { signsAsked: row.signsAsked }),
    ...(row.signSlips === null ? {} : { signSlips: row.signSlips as RedFlag[] }),
    kind,
    beganAt,
    endedAt,
    didExtra: row.didExtraUnanswered ? null : row.didExtra,
    news: row.news,
    otherJointWorse: row.otherJointWorse,
    stoppedByFlag: row.stoppedByFlag,
    ...(row.limbChecks === null ? {} : { limbChecks: row.limbChecks }),
    sets: sets.map(
      ({ prescriptionId, itemId, setNumber, repetitions, loadKg, reserve, stopReason, easier }) => ({
        prescriptionId,
        itemId,
        set: setNumber,
        repetitions,
        loadKg,
        reserve,
        stopReason,
        ...(easier === null ? {} : { easier }),
      }),
    ),
    joints: joints.map((one) => ({
      joint: one.joint as Joint,
      painBefore: one.painBefore,
      painDuring: one.painDuring,
      painAfter: one.painAfter,
      twoHoursState: one.painTwoHoursState,
      muscleBurn: one.muscleBurn,
      cuffDiscomfort: one.cuffDiscomfort,
      gaveWay: one.gaveWayUnanswered ? null : one.gaveWay,
    })),
  };
};

const isOwn = ({ enteredAs }: Row): boolean => enteredAs === null || carers.some((one) => one === enteredAs);

/**
 * The newest session sent today from a patient's phone that stands; null where none was. One with a warning sign is
 * not opened again by the patient: about it somebody rings.
 */
export const sentToday = async (
  access: Access,
  patientId: string,
  zone: string,
): Promise<SessionEntry | null> => {
  const rows = await sessionsSince(access, patientId, { since: access.day });
  const amended = new Set(rows.map(({ amends }) => amends));
  const newest = rows.findLast(({ entryId, day }) => day === access.day && !amended.has(entryId));
  if (!newest || !isOwn(newest) || newest.kind === 'test') return null;
  if (newest.stoppedByFlag || (newest.redFlags?.length ?? 0) > 0) return null;
  return dayAt(newest.arrivedAt, zone) === access.day ? entryOf(access, patientId, newest) : null;
};

export interface CorrectedSession {
  readonly day: Day;
  readonly before: SessionEntry;
  readonly after: SessionEntry;
}

/** Each session that a patient put right, as it was sent before and after; oldest first. What the clinic entered and put right is not theirs. */
export const correctedSessions = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly CorrectedSession[]> => {
  const rows = await correctedSince(access, patientId, { since });
  const pairs = rows.filter(isOwn).flatMap((after) => {
    const before = rows.find(({ entryId }) => entryId === after.amends);
    return before ? [{ before, after }] : [];
  });
  const corrected: CorrectedSession[] = [];
  for (const { before, after } of pairs)
    corrected.push({
      day: after.day,
      before: await entryOf(access, patientId, before),
      after: await entryOf(access, patientId, after),
    });
  return corrected;
};

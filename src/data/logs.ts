/** Sessions and mornings of a patient as the core sees them. A null score stays null; an amended entry is replaced. */
import { and, asc, eq, gte, type SQL, sql } from 'drizzle-orm';
import { type Day, daysBetween } from '#core/day.ts';
import type { JointSessionAnswers, MorningRecord, SessionRecord } from '#core/model/record.ts';
import { programmeChoices } from '#core/programme/choices.ts';
import type { Access } from './access.ts';
import { choiceValue } from './choices.ts';
import { dayAt, minuteOfDay } from './civil-time.ts';
import {
  answerColumns,
  answerIn,
  type LaterAnswer,
  laterIn,
  morningColumns,
  morningIn,
  setColumns,
  setIn,
} from './log-cells.ts';
import { morning, morningJoint, sessionJoint, setLog, trainingSession, twoHours } from './schema/schema.ts';
import { nestedRows } from './store/nested-rows.ts';
import { ofPatient, patientQuery } from './store/prepared.ts';

/** Rows that no later row amends; an amendment names the entry it replaces. */
const standing = <R extends { readonly entryId: string; readonly amends: string | null }>(
  rows: readonly R[],
): readonly R[] => {
  const amended = new Set(rows.map((row) => row.amends).filter((id) => id !== null));
  return amended.size === 0 ? rows : rows.filter((row) => !amended.has(row.entryId));
};

const inWindow = (table: typeof trainingSession | typeof morning) =>
  and(ofPatient(table), gte(table.day, sql.placeholder('since')));

/** With the patient named too: the rows of one patient then lie together in the index. */
const ofSession = (table: typeof setLog | typeof sessionJoint | typeof twoHours): SQL =>
  and(eq(table.patientId, trainingSession.patientId), eq(table.sessionId, trainingSession.id))!;

const ofMorning = and(eq(morningJoint.patientId, morning.patientId), eq(morningJoint.morningId, morning.id))!;

const sessionRows = patientQuery((db) =>
  db
    .select({
      id: trainingSession.id,
      entryId: trainingSession.entryId,
      amends: trainingSession.amends,
      beganAt: trainingSession.beganAt,
      arrivedAt: trainingSession.arrivedAt,
      day: trainingSession.day,
      kind: trainingSession.kind,
      redFlags: trainingSession.redFlags,
      extraPainRelief: trainingSession.extraPainRelief,
      didExtra: trainingSession.didExtra,
      didExtraUnanswered: trainingSession.didExtraUnanswered,
      toldNew: trainingSession.toldNew,
      clockDoubtful: trainingSession.clockDoubtful,
      sets: nestedRows(setColumns, setLog, ofSession(setLog), setIn),
      joints: nestedRows(answerColumns, sessionJoint, ofSession(sessionJoint), answerIn),
      later: nestedRows(
        [twoHours.joint, twoHours.pain, twoHours.arrivedAt],
        twoHours,
        sql`${ofSession(twoHours)} AND ${twoHours.clockDoubtful} = 0`,
        laterIn,
      ),
    })
    .from(trainingSession)
    .where(inWindow(trainingSession))
    .orderBy(asc(trainingSession.beganAt)),
);

/** The last to arrive of the answers on a joint. */
const withLater = (answers: JointSessionAnswers, later: readonly LaterAnswer[]): JointSessionAnswers => {
  if (answers.painTwoHours === 'not-applicable') return answers;
  const mine = later.filter((row) => row.joint === answers.joint).sort((a, b) => a.arrivedAt - b.arrivedAt);
  return { ...answers, painTwoHours: mine.at(-1)?.pain ?? null };
};

/** Sessions of a patient from a civil day on, oldest first. */
export const sessionsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly SessionRecord[]> => {
  const rows = await sessionRows(access, patientId, { since });
  return standing(rows).map((row) => ({
    id: row.id,
    beganAt: row.beganAt,
    recordedAt: row.arrivedAt,
    day: row.day,
    kind: row.kind,
    sets: [...row.sets].sort((a, b) => a.set - b.set),
    redFlags: row.redFlags,
    extraPainRelief: row.extraPainRelief,
    didExtra: row.didExtraUnanswered ? null : row.didExtra,
    toldNew: row.toldNew ?? false,
    joints: row.later.length > 0 ? row.joints.map((answers) => withLater(answers, row.later)) : row.joints,
    clockDoubtful: row.clockDoubtful,
    ...(row.amends === null ? {} : { amended: true }),
  }));
};

const morningRows = patientQuery((db) =>
  db
    .select({
      id: morning.id,
      entryId: morning.entryId,
      amends: morning.amends,
      day: morning.day,
      zone: morning.zone,
      answeredAt: morning.answeredAt,
      arrivedAt: morning.arrivedAt,
      redFlags: morning.redFlags,
      extraPainRelief: morning.extraPainRelief,
      fatigue: morning.fatigue,
      fatigueState: morning.fatigueState,
      clockDoubtful: morning.clockDoubtful,
      late: morning.late,
      joints: nestedRows(morningColumns, morningJoint, ofMorning, morningIn),
    })
    .from(morning)
    .where(inWindow(morning))
    .orderBy(asc(morning.day), asc(morning.arrivedAt)),
);

/** No minute of a day is this early: the engine takes the scores as missing and keeps the warning signs. */
const outsideEveryWindow = -1;

type MorningRow = Pick<typeof morning.$inferSelect, 'late' | 'day' | 'zone' | 'answeredAt'>;

/**
 * Given late within the clinic's days it counts as the morning's answer, whatever the hour it was given;
 * later than that it would be guessed.
 */
const minuteOf = (row: MorningRow, lateDays: number): Pick<MorningRecord, 'localMinute'> => {
  if (!row.late) return { localMinute: minuteOfDay(row.answeredAt, row.zone) };
  const days = daysBetween(row.day, dayAt(row.answeredAt, row.zone));
  return days <= lateDays ? {} : { localMinute: outsideEveryWindow };
};

/** Mornings of a patient from a civil day on, oldest first. */
export const morningsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly MorningRecord[]> => {
  const rows = await morningRows(access, patientId, { since });
  const lateDays = rows.some((row) => row.late)
    ? await choiceValue(access, programmeChoices, 'late-morning-days')
    : 0;
  return standing(rows).map((row) => ({
    id: row.id,
    day: row.day,
    recordedAt: row.arrivedAt,
    ...minuteOf(row, lateDays),
    joints: row.joints,
    redFlags: row.redFlags,
    extraPainRelief: row.extraPainRelief,
    fatigue: row.fatigueState === 'not-applicable' ? 'not-applicable' : row.fatigue,
    clockDoubtful: row.clockDoubtful,
    ...(row.amends === null ? {} : { amended: true }),
  }));
};

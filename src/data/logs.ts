/** Sessions and mornings of a patient as the core sees them. A null score stays null; an amended entry is replaced. */
import { and, asc, eq, getTableColumns, gte } from 'drizzle-orm';
import type { Day } from '#core/day.ts';
import type { Joint } from '#core/joints.ts';
import type {
  JointMorningAnswers,
  JointSessionAnswers,
  MorningRecord,
  SessionRecord,
  SetRecord,
} from '#core/model/record.ts';
import type { Access } from './access.ts';
import { minuteOfDay } from './civil-time.ts';
import { morning, morningJoint, sessionJoint, setLog, trainingSession, twoHours } from './schema/schema.ts';

const grouped = <R>(rows: readonly R[], key: (row: R) => string): ReadonlyMap<string, readonly R[]> => {
  const groups = new Map<string, R[]>();
  for (const row of rows) {
    const known = groups.get(key(row));
    if (known) known.push(row);
    else groups.set(key(row), [row]);
  }
  return groups;
};

/** Rows that no later row amends; an amendment names the entry it replaces. */
const standing = <R extends { readonly entryId: string; readonly amends: string | null }>(
  rows: readonly R[],
): readonly R[] => {
  const amended = new Set(rows.map((row) => row.amends).filter((id) => id !== null));
  return rows.filter((row) => !amended.has(row.entryId));
};

type TwoHoursRow = typeof twoHours.$inferSelect;

const jointAnswers = (
  row: typeof sessionJoint.$inferSelect,
  later: readonly TwoHoursRow[],
): JointSessionAnswers => {
  const answered = later.filter((answer) => answer.joint === row.joint && !answer.clockDoubtful).at(-1);
  return {
    joint: row.joint as Joint,
    painBefore: row.painBefore,
    painDuring: row.painDuring,
    painAfter: row.painAfter,
    painTwoHours: row.painTwoHoursState === 'not-applicable' ? 'not-applicable' : (answered?.pain ?? null),
    gaveWay: row.gaveWay,
  };
};

const setRecord = (row: typeof setLog.$inferSelect): SetRecord => ({
  lineId: row.lineId,
  prescriptionId: row.prescriptionId,
  set: row.setNumber,
  repetitions: row.repetitions,
  loadKg: row.loadKg,
  reserve: row.reserve,
  stopReason: row.stopReason,
});

/** Sessions of a patient from a civil day on, oldest first. */
export const sessionsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly SessionRecord[]> => {
  const { read } = access.store;
  const inWindow = and(
    eq(trainingSession.clinicId, access.clinicId),
    eq(trainingSession.patientId, patientId),
    gte(trainingSession.day, since),
  );
  const rows = await read
    .select()
    .from(trainingSession)
    .where(inWindow)
    .orderBy(asc(trainingSession.beganAt));
  const sets = await read
    .select(getTableColumns(setLog))
    .from(trainingSession)
    .innerJoin(setLog, eq(setLog.sessionId, trainingSession.id))
    .where(inWindow)
    .orderBy(asc(setLog.setNumber));
  const answers = await read
    .select(getTableColumns(sessionJoint))
    .from(trainingSession)
    .innerJoin(sessionJoint, eq(sessionJoint.sessionId, trainingSession.id))
    .where(inWindow);
  const later = await read
    .select()
    .from(twoHours)
    .where(and(eq(twoHours.clinicId, access.clinicId), eq(twoHours.patientId, patientId)))
    .orderBy(asc(twoHours.arrivedAt));
  const setsBySession = grouped(sets, (row) => row.sessionId);
  const jointsBySession = grouped(answers, (row) => row.sessionId);
  const laterBySession = grouped(later, (row) => row.sessionId);
  return standing(rows).map((row) => ({
    id: row.id,
    beganAt: row.beganAt,
    recordedAt: row.arrivedAt,
    day: row.day,
    kind: row.kind,
    sets: (setsBySession.get(row.id) ?? []).map(setRecord),
    redFlags: row.redFlags,
    extraPainRelief: row.extraPainRelief,
    didExtra: row.didExtra,
    joints: (jointsBySession.get(row.id) ?? []).map((joint) =>
      jointAnswers(joint, laterBySession.get(row.id) ?? []),
    ),
    clockDoubtful: row.clockDoubtful,
  }));
};

const morningAnswers = (row: typeof morningJoint.$inferSelect): JointMorningAnswers => ({
  joint: row.joint as Joint,
  pain: row.pain,
  stiffnessMinutes: row.stiffnessState === 'not-applicable' ? 'not-applicable' : row.stiffnessMinutes,
  swelling: row.swellingState === 'not-applicable' ? 'not-applicable' : row.swelling,
  flare: row.flare,
});

/** Mornings of a patient from a civil day on, oldest first. */
export const morningsOf = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly MorningRecord[]> => {
  const { read } = access.store;
  const inWindow = and(
    eq(morning.clinicId, access.clinicId),
    eq(morning.patientId, patientId),
    gte(morning.day, since),
  );
  const rows = await read
    .select()
    .from(morning)
    .where(inWindow)
    .orderBy(asc(morning.day), asc(morning.arrivedAt));
  const answers = await read
    .select(getTableColumns(morningJoint))
    .from(morning)
    .innerJoin(morningJoint, eq(morningJoint.morningId, morning.id))
    .where(inWindow);
  const byMorning = grouped(answers, (row) => row.morningId);
  return standing(rows).map((row) => ({
    id: row.id,
    day: row.day,
    recordedAt: row.arrivedAt,
    localMinute: minuteOfDay(row.answeredAt, row.zone),
    joints: (byMorning.get(row.id) ?? []).map(morningAnswers),
    redFlags: row.redFlags,
    extraPainRelief: row.extraPainRelief,
    fatigue: row.fatigueState === 'not-applicable' ? 'not-applicable' : row.fatigue,
    clockDoubtful: row.clockDoubtful,
  }));
};

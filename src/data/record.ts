/**
 * One patient's stored history as the core sees it. Rows become core values here and nowhere else;
 * a null score stays null.
 */
import { and, asc, eq, getTableColumns, gte } from 'drizzle-orm';
import { addDays, type Day } from '#core/day.ts';
import type { Joint } from '#core/joints.ts';
import type {
  Baseline,
  EffusionRecord,
  JointMorningAnswers,
  JointSessionAnswers,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
  SetRecord,
} from '#core/model/record.ts';
import { plannedSessions } from '#core/programme/planned-sessions.ts';
import type { Access } from './access.ts';
import { eventsOf, limitsOf } from './care.ts';
import { minuteOfDay } from './civil-time.ts';
import { patientOf } from './people.ts';
import { prescriptionsOf } from './prescriptions.ts';
import { programmesOf } from './programmes.ts';
import {
  baseline,
  effusionTest,
  morning,
  morningJoint,
  sessionJoint,
  setLog,
  trainingSession,
  twoHours,
} from './schema/schema.ts';

/** Days of log the engine looks back over; longer than any window of its rules. */
export const engineWindowDays = 120;

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

const baselinesOf = async (access: Access, patientId: string): Promise<readonly Baseline[]> => {
  const rows = await access.store.read
    .select()
    .from(baseline)
    .where(and(eq(baseline.clinicId, access.clinicId), eq(baseline.patientId, patientId)))
    .orderBy(asc(baseline.recordedAt));
  return rows.map((row) => ({
    joint: row.joint as Joint,
    usualPain: row.usualPain,
    usualPainTop: row.usualPainTop,
    painCeiling: row.painCeiling,
    usualStiffnessMinutes: row.usualStiffnessMinutes,
    usualSwelling: row.usualSwelling,
    usualEffusion: row.usualEffusion,
    usualFatigue: row.usualFatigue,
    frozenOn: row.frozenOn,
    frozenBy: row.byName,
    latched: row.latched,
  }));
};

const effusionsOf = async (access: Access, patientId: string): Promise<readonly EffusionRecord[]> => {
  const rows = await access.store.read
    .select()
    .from(effusionTest)
    .where(and(eq(effusionTest.clinicId, access.clinicId), eq(effusionTest.patientId, patientId)))
    .orderBy(asc(effusionTest.day), asc(effusionTest.recordedAt));
  return rows.map((row) => ({ joint: row.joint as Joint, day: row.day, grade: row.grade }));
};

/** Signed versions only: what nobody signed was never followed. */
const signedVersions = async (access: Access, patientId: string): Promise<readonly PrescriptionVersion[]> => {
  const rows = await prescriptionsOf(access, patientId);
  return rows.flatMap((row) =>
    row.signedAt === null
      ? []
      : [
          {
            id: row.id,
            lineId: row.lineId,
            version: row.version,
            dose: row.dose,
            badDay: row.badDay,
            joints: row.joints,
            signedAt: row.signedAt,
            endedAt: row.endedAt,
            origin: row.origin,
          },
        ],
  );
};

/** The whole record the engine needs, or null when the patient is not of this clinic. */
export const recordOf = async (
  access: Access,
  patientId: string,
  windowDays = engineWindowDays,
): Promise<PatientRecord | null> => {
  const person = await patientOf(access, patientId);
  if (!person) return null;
  const since = addDays(access.day, -windowDays);
  return {
    patientId,
    followedJoints: person.profile?.followedJoints ?? [],
    inflammatoryArthritis: person.profile?.inflammatoryArthritis ?? false,
    ownedLoadsKg: person.profile?.ownedLoadsKg ?? [],
    prescriptions: await signedVersions(access, patientId),
    sessions: await sessionsOf(access, patientId, since),
    mornings: await morningsOf(access, patientId, since),
    effusions: await effusionsOf(access, patientId),
    baselines: await baselinesOf(access, patientId),
    planned: plannedSessions(await programmesOf(access, patientId), since, access.day),
    events: await eventsOf(access, patientId),
    limits: await limitsOf(access, patientId),
  };
};

/** A session with its sets and answers, as it comes gathered from the file: columns, and how to read them. */
import { and, eq, type SQL, sql } from 'drizzle-orm';
import type { JointSessionAnswers, SessionRecord, SetRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { type Cells, listIn, nestedRows, numberIn, rowsIn, yesIn } from '../database/nested-rows.ts';
import { sessionJoint, setLog, trainingSession, twoHours } from '../schema/schema.ts';

/** With the patient named too: the rows of one patient then lie together in the index. */
const ofSession = (table: typeof setLog | typeof sessionJoint | typeof twoHours): SQL =>
  and(eq(table.patientId, trainingSession.patientId), eq(table.sessionId, trainingSession.id))!;

const setColumns = [
  setLog.itemId,
  setLog.prescriptionId,
  setLog.setNumber,
  setLog.repetitions,
  setLog.loadKg,
  setLog.reserve,
  setLog.stopReason,
  setLog.easier,
] as const;

const setIn = ([
  itemId,
  prescriptionId,
  set,
  repetitions,
  load,
  reserve,
  stop,
  easier,
]: Cells): SetRecord => ({
  itemId: itemId as string,
  prescriptionId: prescriptionId as string,
  set: set as number,
  repetitions: numberIn(repetitions!),
  loadKg: numberIn(load!),
  reserve: numberIn(reserve!),
  stopReason: stop as SetRecord['stopReason'],
  ...(easier === null ? {} : { easier: easier === 1 }),
});

const answerColumns = [
  sessionJoint.joint,
  sessionJoint.painBefore,
  sessionJoint.painDuring,
  sessionJoint.painAfter,
  sessionJoint.painTwoHoursState,
  sessionJoint.gaveWay,
  sessionJoint.gaveWayUnanswered,
] as const;

/** Pain two hours later is filled in from the answers that came after. */
const answerIn = ([
  joint,
  before,
  during,
  after,
  twoHoursState,
  gaveWay,
  gaveWayUnanswered,
]: Cells): JointSessionAnswers => ({
  joint: joint as JointSessionAnswers['joint'],
  painBefore: numberIn(before!),
  painDuring: numberIn(during!),
  painAfter: numberIn(after!),
  painTwoHours: twoHoursState === 'not-applicable' ? 'not-applicable' : null,
  gaveWay: gaveWayUnanswered === 1 ? null : gaveWay === 1,
});

interface LaterAnswer {
  readonly joint: string;
  readonly pain: number | null;
  readonly arrivedAt: number;
}

const laterIn = ([joint, pain, arrivedAt]: Cells): LaterAnswer => ({
  joint: joint as string,
  pain: numberIn(pain!),
  arrivedAt: arrivedAt as number,
});

/** Pain two hours later is the last to arrive of the answers on a joint. */
const withLater = (
  joints: readonly JointSessionAnswers[],
  later: readonly LaterAnswer[],
): readonly JointSessionAnswers[] => {
  return joints.map((answers) =>
    answers.painTwoHours === 'not-applicable'
      ? answers
      : { ...answers, painTwoHours: later.findLast((one) => one.joint === answers.joint)?.pain ?? null },
  );
};

export const sessionColumns = [
  trainingSession.id,
  trainingSession.entryId,
  trainingSession.amends,
  trainingSession.beganAt,
  trainingSession.arrivedAt,
  trainingSession.day,
  trainingSession.kind,
  trainingSession.redFlags,
  trainingSession.extraPainRelief,
  trainingSession.didExtra,
  trainingSession.didExtraUnanswered,
  trainingSession.reportedNew,
  trainingSession.clockDoubtful,
  nestedRows(setColumns, setLog, ofSession(setLog)),
  nestedRows(answerColumns, sessionJoint, ofSession(sessionJoint)),
  nestedRows(
    [twoHours.joint, twoHours.pain, twoHours.arrivedAt],
    twoHours,
    sql`${ofSession(twoHours)} AND ${twoHours.clockDoubtful} = 0`,
  ),
] as const;

/** A session as it stands in the file; a later row may amend it. */
export interface SessionRow {
  readonly entryId: string;
  readonly amends: string | null;
  /** Without what was answered two hours later. */
  readonly record: SessionRecord;
  /** In the order in which they arrived. */
  readonly later: readonly LaterAnswer[];
}

/** The session with the answers two hours later that had arrived by an instant. */
export const sessionKnownAt = (
  { record, later }: SessionRow,
  instant = Number.POSITIVE_INFINITY,
): SessionRecord => {
  const arrived = later.filter(({ arrivedAt }) => arrivedAt <= instant);
  return arrived.length === 0 ? record : { ...record, joints: withLater(record.joints, arrived) };
};

const bySet = (a: SetRecord, b: SetRecord): number => a.set - b.set;

export const sessionIn = ([
  id,
  entryId,
  amends,
  beganAt,
  arrivedAt,
  day,
  kind,
  redFlags,
  extraPainRelief,
  didExtra,
  didExtraUnanswered,
  reportedNew,
  clockDoubtful,
  sets,
  joints,
  later,
]: Cells): SessionRow => ({
  entryId: entryId as string,
  amends: amends as string | null,
  record: {
    id: id as string,
    beganAt: beganAt as number,
    recordedAt: arrivedAt as number,
    day: day as Day,
    kind: kind as SessionRecord['kind'],
    sets: rowsIn(sets!, setIn).sort(bySet),
    redFlags: listIn(redFlags!),
    extraPainRelief: yesIn(extraPainRelief!),
    didExtra: didExtraUnanswered === 1 ? null : didExtra === 1,
    reportedNew: reportedNew === 1,
    joints: rowsIn(joints!, answerIn),
    clockDoubtful: clockDoubtful === 1,
    ...(amends === null ? {} : { amended: true }),
  },
  later: rowsIn(later!, laterIn).sort((a, b) => a.arrivedAt - b.arrivedAt),
});

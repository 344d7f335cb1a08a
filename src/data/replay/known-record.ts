/**
 * One patient's record as it was known at past moments: what arrived, was amended, confirmed, corrected or signed
 * later is not in it. Building it anew for every moment would cost more than deciding, so one record serves all
 * moments between two at which something other than the next entry arrived; what the engine itself leaves out by
 * its time of arrival, entries still to come, may lie in it.
 */
import { countUpTo } from '#core/decision/facts/count-up-to.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import type { JointEvaluation } from '#core/decision/scope.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays, type Day, dayNumber } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { settingVersions } from '../clinic/clinic-settings.ts';
import { machineEntries } from '../clinic/machines.ts';
import { markRows } from '../corrections/correction-index.ts';
import { morningRows, sessionRows } from '../entries/logs.ts';
import type { SessionRow } from '../entries/session-rows.ts';
import { eventRows } from '../episode/care-events.ts';
import { episodeChangeRows, episodeRows } from '../episode/episodes.ts';
import { baselineRowsOf } from '../patients/baselines.ts';
import { careProfileRows } from '../patients/care-profiles.ts';
import { effusionRows } from '../patients/effusions.ts';
import { recordSince } from '../patients/record.ts';
import { engineWindowDays } from '../patients/record-queries.ts';
import { programmeRows } from '../prescribing/programmes.ts';
import { withdrawnRows } from '../prescribing/signature-withdrawal.ts';

/** An entry that a later moment than its own day still did not know: the record then changes when it arrives. */
const isLate = ({ record }: SessionRow, moments: readonly Moment[]): boolean => {
  const upTo = countUpTo(moments, record.recordedAt - 1, ({ instant }) => instant);
  const last = moments[upTo - 1];
  return last !== undefined && (last.day > record.day || last.instant >= record.beganAt);
};

const recorded = (rows: readonly { readonly recordedAt: number }[]) =>
  rows.map(({ recordedAt }) => recordedAt);

/** Instants at which the record became another one than by the next entry. */
const turningPoints = async (
  access: Access,
  patientId: string,
  since: Day,
  moments: readonly Moment[],
): Promise<readonly number[]> => {
  const ask = { since };
  const sessions = (await sessionRows(access, patientId, ask))[0]?.rows ?? [];
  const mornings = (await morningRows(access, patientId, ask))[0]?.rows ?? [];
  const marks = await markRows(access, patientId);
  const withdrawn = await withdrawnRows(access, patientId);
  const settings = await settingVersions(access.store.read, { clinicId: access.clinicId });
  const all = [
    ...sessions
      .filter((row) => row.amends !== null || isLate(row, moments))
      .map((row) => row.record.recordedAt),
    ...sessions.flatMap(({ later }) => later.map(({ arrivedAt }) => arrivedAt)),
    ...mornings.filter(({ amends }) => amends !== null).map((row) => row.record.recordedAt),
    ...marks.flatMap(({ correctedAt, seenAt }) => (seenAt === null ? [correctedAt] : [correctedAt, seenAt])),
    ...withdrawn.map(({ withdrawnAt }) => withdrawnAt + 1),
    ...settings.map(({ changedAt }) => changedAt),
    ...(await machineEntries(access)).map(({ writtenAt }) => writtenAt),
    ...(await eventRows(access, patientId)).map((row) => row.care_event.recordedAt),
    ...recorded(await baselineRowsOf(access, patientId)),
    ...recorded(await effusionRows(access, patientId)),
    ...recorded(await programmeRows(access, patientId)),
    ...recorded(await careProfileRows(access, patientId)),
    ...recorded(await episodeRows(access, patientId)),
    ...recorded(await episodeChangeRows(access, patientId)),
  ];
  return [...new Set(all)].sort((a, b) => a - b);
};

const itself = (one: number): number => one;
const dayOf = (one: { readonly day: number }): number => one.day;

/** Sessions, and mornings, that are enough for every look back of the engine that counts entries and not days. */
const enoughEntries = 8;
/** Days of a flare from which its first day may lie before what the engine reads. */
const longFlare = engineWindowDays - 10;

/**
 * Whether what the engine reads, its window of days, says of a joint all that a longer log would: a session, a
 * morning or a usual value from before it would else be looked at that was not looked at then.
 */
const isWithinWindow = (record: PatientRecord, at: Moment): boolean => {
  const index = indexRecord(record);
  const day = dayNumber(at.day);
  const from = day - engineWindowDays - 1;
  const isEnough = (list: readonly { readonly day: number }[] = []): boolean => {
    const before = countUpTo(list, from, dayOf);
    return before === 0 || countUpTo(list, day, dayOf) - before >= enoughEntries;
  };
  return [...new Set([...record.followedJoints, ...index.sessionsOf.keys()])].every((joint) => {
    const baselines = index.baselinesOf.get(joint) ?? [];
    const standing = baselines[countUpTo(baselines, day, ({ setDay }) => setDay) - 1];
    // Only the sum chart reads the mornings since a baseline was set, and only one with a spread has a chart.
    const isStandingOld = standing?.morningSpread != null && standing.setDay <= from;
    return isEnough(index.sessionsOf.get(joint)) && isEnough(index.morningsOf.get(joint)) && !isStandingOld;
  });
};

export const isLongFlare = (joints: readonly Pick<JointEvaluation, 'facts'>[]): boolean =>
  joints.some(({ facts }) => facts.flareDays >= longFlare);

export interface KnownRecords {
  /** As the engine would have read it at a moment; null while there was nobody. */
  readonly at: (moment: Moment, isExact?: boolean) => Promise<PatientRecord | null>;
}

const trimmed = (record: PatientRecord, from: Day): PatientRecord => ({
  ...record,
  sessions: record.sessions.filter(({ day }) => day >= from),
  mornings: record.mornings.filter(({ day }) => day >= from),
});

/**
 * Of one patient at moments that are named beforehand, oldest first. What it is read from is remembered by whoever
 * asks for it inside `readTogether`.
 */
export const knownRecords = async (
  access: Access,
  patientId: string,
  since: Day,
  moments: readonly Moment[],
): Promise<KnownRecords> => {
  const turns = await turningPoints(access, patientId, since, moments);
  const records = new Map<number, PatientRecord | null>();
  const lastDay = moments.at(-1)?.day ?? access.day;
  const between = async (turn: number): Promise<PatientRecord | null> => {
    const known = records.get(turn);
    if (known !== undefined) return known;
    const knownAt = (turns[turn] ?? Number.POSITIVE_INFINITY) - 1;
    const record = await recordSince({ ...access, knownAt, day: lastDay }, patientId, since);
    records.set(turn, record);
    return record;
  };
  return {
    at: async (moment, isExact = false) => {
      const record = await between(countUpTo(turns, moment.instant, itself));
      if (!record || (!isExact && isWithinWindow(record, moment))) return record;
      return trimmed(record, addDays(moment.day, -engineWindowDays));
    },
  };
};

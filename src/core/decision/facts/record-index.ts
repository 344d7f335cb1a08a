/**
 * A patient's history arranged for looking back: sorted once, so that the order of entry can never
 * matter and a fact costs its own window and not the whole history.
 */

import type { Joint } from '#core/exercises/joints.ts';
import {
  type Baseline,
  type EffusionRecord,
  effusions,
  type PatientRecord,
  type PrescriptionVersion,
  type SessionRecord,
} from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import type {
  IndexedMorning,
  IndexedSession,
  JointMorning,
  JointSession,
  RecordIndex,
} from './indexed-record.ts';

const byText = (a: string, b: string): number => Number(a > b) - Number(a < b);

const add = <K, V>(map: Map<K, V[]>, key: K, value: V): void => {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
};

const numbersOnce = (numbers: Iterable<number>): readonly number[] =>
  [...new Set(numbers)].sort((a, b) => a - b);

/**
 * Joints a session speaks of: those its sets load. A session without any set, or with sets of a
 * version not in the record, speaks of the joints that were asked about.
 */
const jointsOf = (
  session: SessionRecord,
  versions: ReadonlyMap<string, PrescriptionVersion>,
): ReadonlySet<Joint> => {
  const found = new Set<Joint>();
  let unknown = session.sets.length === 0;
  let last: string | null = null;
  for (const set of session.sets) {
    if (set.prescriptionId === last) continue;
    last = set.prescriptionId;
    const version = versions.get(last);
    if (!version) unknown = true;
    else for (const joint of version.joints) found.add(joint);
  }
  if (unknown) for (const { joint } of session.joints) found.add(joint);
  return found;
};

const sortedSessions = (record: PatientRecord): IndexedSession[] =>
  record.sessions
    .map((session) => ({
      session,
      began: session.clockDoubtful ? session.recordedAt : session.beganAt,
      day: dayNumber(session.day),
      work: null,
    }))
    .sort((a, b) => a.began - b.began || byText(a.session.id, b.session.id));

const minuteOf = ({ morning }: IndexedMorning): number => morning.localMinute ?? 0;

const sortedMornings = (record: PatientRecord): IndexedMorning[] =>
  record.mornings
    .map((morning) => ({ morning, day: dayNumber(morning.day) }))
    .sort(
      (a, b) =>
        a.day - b.day ||
        minuteOf(a) - minuteOf(b) ||
        a.morning.recordedAt - b.morning.recordedAt ||
        byText(a.morning.id, b.morning.id),
    );

/** A band nobody knows is narrower than any. */
const topOf = ({ usualPain, usualPainTop }: Baseline): number => usualPainTop ?? usualPain ?? -1;

/** Of two baselines set on one day the narrower stands last and is used. */
const indexedBaselines = (record: PatientRecord): RecordIndex['baselinesOf'] => {
  const map = new Map<Joint, (Baseline & { setDay: number })[]>();
  for (const baseline of record.baselines) {
    add(map, baseline.joint, { ...baseline, setDay: dayNumber(baseline.setOn) });
  }
  for (const list of map.values()) {
    list.sort(
      (a, b) => a.setDay - b.setDay || topOf(b) - topOf(a) || b.acceptablePainLimit - a.acceptablePainLimit,
    );
  }
  return map;
};

const indexedEffusions = (record: PatientRecord): RecordIndex['effusionsOf'] => {
  const map = new Map<Joint, (EffusionRecord & { number: number })[]>();
  for (const effusion of record.effusions) {
    add(map, effusion.joint, { ...effusion, number: dayNumber(effusion.day) });
  }
  for (const list of map.values()) {
    list.sort((a, b) => a.number - b.number || effusions.indexOf(a.grade) - effusions.indexOf(b.grade));
  }
  return map;
};

const build = (record: PatientRecord): RecordIndex => {
  const versions = new Map(record.prescriptions.map((version) => [version.id, version]));
  const sessions = sortedSessions(record);
  const mornings = sortedMornings(record);
  const sessionsOf = new Map<Joint, JointSession[]>();
  for (const indexed of sessions) {
    for (const joint of jointsOf(indexed.session, versions)) {
      const answers = indexed.session.joints.find((one) => one.joint === joint) ?? null;
      add(sessionsOf, joint, {
        session: indexed.session,
        began: indexed.began,
        day: indexed.day,
        whole: indexed,
        answers,
        work: null,
      });
    }
  }
  const morningsOf = new Map<Joint, JointMorning[]>();
  for (const indexed of mornings) {
    for (const answers of indexed.morning.joints) {
      add(morningsOf, answers.joint, { morning: indexed.morning, day: indexed.day, answers });
    }
  }
  return {
    record,
    versions,
    sessions,
    mornings,
    doubtfulMornings: record.mornings.filter((morning) => morning.clockDoubtful),
    sessionsOf,
    morningsOf,
    baselinesOf: indexedBaselines(record),
    effusionsOf: indexedEffusions(record),
    plannedDays: numbersOnce(record.planned.map((planned) => dayNumber(planned.day))),
    sessionDays: numbersOnce(sessions.map((one) => one.day)),
  };
};

const indexes = new WeakMap<PatientRecord, RecordIndex>();

/** Built once for each record value; records are never changed in place. */
export const indexRecord = (record: PatientRecord): RecordIndex => {
  let index = indexes.get(record);
  if (!index) {
    index = build(record);
    indexes.set(record, index);
  }
  return index;
};

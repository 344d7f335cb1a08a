/**
 * A patient's history arranged for looking back: sorted once, so that the order of entry can never
 * matter and a fact costs its own window and not the whole history.
 */
import { dayNumber } from '../day.ts';
import type { Joint } from '../joints.ts';
import {
  type Baseline,
  type EffusionRecord,
  effusions,
  type JointMorningAnswers,
  type JointSessionAnswers,
  type MorningRecord,
  type PatientRecord,
  type PrescriptionVersion,
  type SessionRecord,
} from '../model/record.ts';
import type { ItemWork } from './line-work.ts';

export interface IndexedSession {
  readonly session: SessionRecord;
  /** Instant used for order: a doubtful clock says nothing, so the arrival stands in for it. */
  readonly began: number;
  readonly day: number;
  /** Of every line; filled when first asked for. */
  work: readonly ItemWork[] | null;
}

export interface JointSession extends Omit<IndexedSession, 'work'> {
  readonly whole: IndexedSession;
  /** null when the joint was loaded and not asked about. */
  readonly answers: JointSessionAnswers | null;
  /** Of the lines that load the joint; filled when first asked for. */
  work: readonly ItemWork[] | null;
}

export interface IndexedMorning {
  readonly morning: MorningRecord;
  readonly day: number;
}

export interface JointMorning extends IndexedMorning {
  readonly answers: JointMorningAnswers;
}

export interface RecordIndex {
  readonly record: PatientRecord;
  readonly versions: ReadonlyMap<string, PrescriptionVersion>;
  readonly sessions: readonly IndexedSession[];
  readonly mornings: readonly IndexedMorning[];
  /** Mornings whose day cannot be trusted; few, and looked at for danger only. */
  readonly doubtfulMornings: readonly MorningRecord[];
  readonly sessionsOf: ReadonlyMap<Joint, readonly JointSession[]>;
  readonly morningsOf: ReadonlyMap<Joint, readonly JointMorning[]>;
  readonly baselinesOf: ReadonlyMap<Joint, readonly (Baseline & { readonly setDay: number })[]>;
  readonly effusionsOf: ReadonlyMap<Joint, readonly (EffusionRecord & { readonly number: number })[]>;
  /** Day numbers, sorted, each once. */
  readonly plannedDays: readonly number[];
  readonly sessionDays: readonly number[];
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

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

const sortedMornings = (record: PatientRecord): IndexedMorning[] =>
  record.mornings
    .map((morning) => ({ morning, day: dayNumber(morning.day) }))
    .sort(
      (a, b) =>
        a.day - b.day ||
        (a.morning.localMinute ?? 0) - (b.morning.localMinute ?? 0) ||
        a.morning.recordedAt - b.morning.recordedAt ||
        byText(a.morning.id, b.morning.id),
    );

/** Of two baselines frozen on one day the narrower stands last and is used. */
const indexedBaselines = (record: PatientRecord): RecordIndex['baselinesOf'] => {
  const map = new Map<Joint, (Baseline & { setDay: number })[]>();
  for (const baseline of record.baselines) {
    add(map, baseline.joint, { ...baseline, setDay: dayNumber(baseline.frozenOn) });
  }
  for (const list of map.values()) {
    list.sort(
      (a, b) =>
        a.setDay - b.setDay ||
        (b.usualPainTop ?? b.usualPain ?? -1) - (a.usualPainTop ?? a.usualPain ?? -1) ||
        b.painCeiling - a.painCeiling,
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

/** What was done of what the recorded prescription version asked, for the lines that load a joint. */
import type { Joint } from '../joints.ts';
import type { Dose } from '../model/dose.ts';
import type { PrescriptionVersion, SessionRecord, SetRecord, StopReason } from '../model/record.ts';
import type { EngineChoiceValues } from './choices.ts';
import type { Facts } from './facts.ts';
import type { Judged } from './judged-session.ts';
import type { JointSession, RecordIndex } from './record-index.ts';

export interface LineWork {
  readonly version: PrescriptionVersion;
  /** The dose meant for that day: the prescribed one or the signed easier session. */
  readonly dose: Dose;
  readonly sets: readonly SetRecord[];
}

/** Work of a session by prescription version, for the lines that load the joint. */
export const lineWork = (
  session: SessionRecord,
  joint: Joint,
  versions: RecordIndex['versions'],
): readonly LineWork[] => {
  const byVersion = new Map<string, SetRecord[]>();
  for (const set of session.sets) {
    const list = byVersion.get(set.prescriptionId);
    if (list) list.push(set);
    else byVersion.set(set.prescriptionId, [set]);
  }
  const found: LineWork[] = [];
  for (const [id, sets] of byVersion) {
    const version = versions.get(id);
    if (!version?.joints.includes(joint)) continue;
    found.push({ version, dose: session.kind === 'bad-day' ? version.badDay : version.dose, sets });
  }
  return found;
};

export const floorOfSet = (dose: Dose, set: number): number =>
  dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? 0) : set <= dose.sets ? dose.repetitions.low : 0;

export const prescribedLoadKg = (dose: Dose): number =>
  dose.method === 'variation' ? dose.addedKg : dose.loadKg;

/**
 * Share of the floor of the band that was done, at most 100. An unanswered count is credited in full:
 * if that still falls short the shortfall is certain, otherwise the share is unknown. Work whose load
 * was not said is unknown too.
 */
export const repetitionsDonePercent = ({ dose, sets }: LineWork): number | null => {
  let asked = 0;
  for (let set = 1; set <= dose.sets; set++) asked += floorOfSet(dose, set);
  const credit = new Map<number, number>();
  let isUnknown = false;
  for (const one of sets) {
    const floor = floorOfSet(dose, one.set);
    if (one.repetitions === null || (one.loadKg === null && prescribedLoadKg(dose) > 0)) isUnknown = true;
    const done = Math.min(floor, one.repetitions ?? floor);
    credit.set(one.set, Math.max(credit.get(one.set) ?? 0, done));
  }
  let done = 0;
  for (const repetitions of credit.values()) done += repetitions;
  const percent = asked === 0 ? 100 : (100 * done) / asked;
  return percent >= 100 && isUnknown ? null : percent;
};

/** From most to least telling; the first found among the sets is the session's. */
const stopOrder: readonly StopReason[] = [
  'joint-pain',
  'symptom',
  'unknown',
  'tired',
  'equipment',
  'time',
  'none',
];

const worstStop = (work: readonly LineWork[]): StopReason => {
  const found = new Set(work.flatMap(({ sets }) => sets.map((set) => set.stopReason)));
  return stopOrder.find((reason) => found.has(reason)) ?? 'none';
};

const reserveOf = (work: readonly LineWork[]): Pick<Facts, 'reserveShortfall' | 'prescribedReserve'> => {
  let reserveShortfall = 0;
  let prescribedReserve = 0;
  for (const { dose, sets } of work) {
    if (dose.method === 'occlusion' || dose.reserve < 1) continue;
    prescribedReserve = Math.max(prescribedReserve, dose.reserve);
    for (const set of sets) {
      // Not said is read as no repetition left: unknown never progresses.
      reserveShortfall = Math.max(reserveShortfall, dose.reserve - (set.reserve ?? 0));
    }
  }
  return { reserveShortfall, prescribedReserve };
};

const loadTolerance = 1e-9;

const isOverdone = ({ dose, sets }: LineWork, choices: EngineChoiceValues): boolean => {
  const limit = prescribedLoadKg(dose) * (1 + choices['overdone-percent'] / 100) + loadTolerance;
  return sets.length > dose.sets || sets.some((set) => set.loadKg !== null && set.loadKg > limit);
};

/** A line asked for more than this many sessions is found by the largest value of the choice. */
const longestRun = 4;

const runOnTarget = (
  list: readonly JointSession[],
  from: number,
  joint: Joint,
  version: PrescriptionVersion,
  index: RecordIndex,
  instant: number,
): number => {
  let run = 0;
  for (let place = from; place >= 0 && run < longestRun; place--) {
    const { session } = list[place]!;
    if (session.recordedAt > instant || !session.sets.some((set) => set.lineId === version.lineId)) continue;
    if (session.kind !== 'full' || session.clockDoubtful) break;
    const work = lineWork(session, joint, index.versions).find((one) => one.version.id === version.id);
    if (!work || repetitionsDonePercent(work) !== 100) break;
    run++;
  }
  return run;
};

type CompletionFacts = Pick<
  Facts,
  | 'repetitionsDonePercent'
  | 'stopReason'
  | 'reserveShortfall'
  | 'prescribedReserve'
  | 'sessionsOnTarget'
  | 'overdone'
>;

const nothingDone: CompletionFacts = {
  repetitionsDonePercent: null,
  stopReason: 'none',
  reserveShortfall: 0,
  prescribedReserve: 0,
  sessionsOnTarget: 0,
  overdone: false,
};

const leastShare = (work: readonly LineWork[]): number | null => {
  let least: number | null = 100;
  for (const line of work) {
    const share = repetitionsDonePercent(line);
    if (share !== null && share < 100) least = Math.min(least ?? 100, share);
    else if (share === null && least === 100) least = null;
  }
  return least;
};

/** The least advanced of the lines that load the joint speaks for it. */
export const completionFacts = (
  index: RecordIndex,
  joint: Joint,
  judged: Judged,
  instant: number,
  choices: EngineChoiceValues,
): CompletionFacts => {
  if (!judged.session) return nothingDone;
  const { session, day } = judged.session;
  const work = lineWork(session, joint, index.versions);
  if (work.length === 0) return { ...nothingDone, overdone: session.didExtra };
  const list = index.sessionsOf.get(joint) ?? [];
  const { place } = judged;
  let sessionsOnTarget = longestRun;
  for (const { version } of work) {
    sessionsOnTarget = Math.min(sessionsOnTarget, runOnTarget(list, place, joint, version, index, instant));
  }
  const before = list[place - 1];
  const twiceADay =
    before !== undefined &&
    before.day === day &&
    before.session.sets.some((set) => work.some(({ version }) => version.lineId === set.lineId));
  return {
    repetitionsDonePercent: session.clockDoubtful ? null : leastShare(work),
    stopReason: worstStop(work),
    ...reserveOf(work),
    sessionsOnTarget,
    overdone: session.didExtra || twiceADay || work.some((line) => isOverdone(line, choices)),
  };
};

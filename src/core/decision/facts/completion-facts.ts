/** What was done of what the recorded prescription version asked, for the lines that load a joint. */
import type { Joint } from '#core/exercises/joints.ts';
import type { PrescriptionVersion, SessionRecord, StopReason } from '#core/record/record.ts';
import { prescribedLoadKg } from '../dose/volume.ts';
import { type EngineSettingValues, isOnSinceVersion2 } from '../settings.ts';
import type { Facts } from './facts.ts';
import type { ItemWork, JointSession, RecordIndex } from './indexed-record.ts';
import { workOf } from './item-work.ts';
import type { Judged } from './judged-session.ts';

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

const worstStop = (work: readonly ItemWork[]): StopReason =>
  stopOrder.find((reason) => work.some(({ sets }) => sets.some((set) => set.stopReason === reason)))!;

const reserveOf = (work: readonly ItemWork[]): Pick<Facts, 'reserveShortfall' | 'prescribedReserve'> => {
  let reserveShortfall = 0;
  let prescribedReserve = 0;
  for (const { dose, sets } of work) {
    if (dose.method === 'occlusion') continue;
    prescribedReserve = Math.max(prescribedReserve, dose.reserve);
    for (const set of sets) {
      // Not said is read as no repetition left: unknown never progresses.
      reserveShortfall = Math.max(reserveShortfall, dose.reserve - (set.reserve ?? 0));
    }
  }
  return { reserveShortfall, prescribedReserve };
};

/** Room for the rounding of a product. */
const rounding = 1e-9;

/** Cuff work is left out: there every extra repetition lengthens the restriction, which is a matter of its own. */
const isOverBand = ({ dose, sets }: ItemWork, settings: EngineSettingValues): boolean => {
  if (dose.method === 'occlusion' || !isOnSinceVersion2('overdone-repetitions', settings)) return false;
  const most = dose.repetitions.high * (1 + settings['overdone-repetitions'] / 100) + rounding;
  return sets.some((set) => set.repetitions !== null && set.repetitions > most);
};

const isOverdone = (work: ItemWork, settings: EngineSettingValues): boolean => {
  const { dose, sets } = work;
  const limit = prescribedLoadKg(dose) * (1 + settings['overdone-percent'] / 100) + rounding;
  if (isOverBand(work, settings)) return true;
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
    if (session.recordedAt > instant || !session.sets.some((set) => set.itemId === version.itemId)) continue;
    if (session.kind !== 'full' || session.clockDoubtful) break;
    const work = workOf(list[place]!, joint, index.versions).find((item) => item.version.id === version.id);
    // The easier session, done in full, is no session on target of the full dose.
    if (work?.donePercent !== 100 || work.isEasier) break;
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

const leastShare = (work: readonly ItemWork[]): number | null => {
  let least: number | null = 100;
  for (const item of work) {
    const share = item.donePercent;
    if (share !== null && share < 100) least = Math.min(least ?? share, share);
    else if (share === null && least === 100) least = null;
  }
  return least;
};

/** Not answered after work counts as more done; where nothing was done there was nothing to ask. */
const mayHaveDoneExtra = ({ didExtra, sets }: SessionRecord): boolean => didExtra ?? sets.length > 0;

/** The least advanced of the lines that load the joint speaks for it. */
export const completionFacts = (
  index: RecordIndex,
  joint: Joint,
  judged: Judged,
  instant: number,
  settings: EngineSettingValues,
): CompletionFacts => {
  if (!judged.session) return nothingDone;
  const { session, day } = judged.session;
  const work = workOf(judged.session, joint, index.versions);
  if (work.length === 0) return { ...nothingDone, overdone: mayHaveDoneExtra(session) };
  const list = index.sessionsOf.get(joint)!;
  const { place } = judged;
  const runs = work.map(({ version }) => runOnTarget(list, place, joint, version, index, instant));
  const before = list[place - 1];
  const twiceADay =
    before !== undefined &&
    before.day === day &&
    before.session.sets.some((set) => work.some(({ version }) => version.itemId === set.itemId));
  return {
    repetitionsDonePercent: session.clockDoubtful ? null : leastShare(work),
    stopReason: worstStop(work),
    ...reserveOf(work),
    sessionsOnTarget: Math.min(...runs),
    overdone: mayHaveDoneExtra(session) || twiceADay || work.some((item) => isOverdone(item, settings)),
  };
};

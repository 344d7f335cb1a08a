/**
 * "The rest as yesterday": whether the answers after the pain may be given as one, and what they were. No source
 * fixes the bounds: clinic choices, for a physiotherapist to confirm.
 */
import type { Joint } from '../exercises/joints.ts';
import { addDays, type Day } from '../time/day.ts';
import type { Baseline, MorningRecord } from './record.ts';

/** A pain of so much is asked about in full. */
const painAskedInFull = 5;
/** And one that lies so far over the usual. */
const overUsualAskedInFull = 2;
/** After so many mornings answered as yesterday the next is asked one by one. */
const asYesterdayInARow = 6;

export interface LastOfJoint {
  readonly joint: Joint;
  /** null = not asked of this joint. */
  readonly stiffnessMinutes: number | null;
  /** Offered only where the pain of this morning lies under it. */
  readonly underPain: number;
}

export type AsYesterday =
  | 'singly'
  | {
      /** Of one or two joints all; of more those on which yesterday was quiet. */
      readonly joints: readonly LastOfJoint[];
      /** Absent = not asked yesterday, not answered, or clearly over the usual: it is asked. */
      readonly fatigue?: number;
      /** Yesterday no other joint was worse; absent = it was, or nobody said. */
      readonly noOtherJoint?: true;
    }
  | null;

interface Known {
  readonly day: Day;
  readonly followed: readonly Joint[];
  /** Oldest first. */
  readonly mornings: readonly MorningRecord[];
  readonly baselines: readonly Baseline[];
}

/** Nothing in it that has to be asked again: no flare, no swelling, no pain relief, nothing left open. */
const quietAnswers = (last: MorningRecord, joint: Joint) => {
  const found = last.joints.find((one) => one.joint === joint);
  if (found?.flare !== false || found.stiffnessMinutes === null) return null;
  if (found.swelling !== 'not-applicable') {
    if (found.swelling !== 'none' || found.swellingQuestion === undefined) return null;
  }
  return { stiffnessMinutes: found.stiffnessMinutes === 'not-applicable' ? null : found.stiffnessMinutes };
};

/** Asked again where it lay so far over the usual that it would hold the load. */
const quietFatigue = ({ fatigue }: MorningRecord, baselines: readonly Baseline[]) => {
  if (typeof fatigue !== 'number') return {};
  const usual = baselines.flatMap(({ usualFatigue }) => usualFatigue ?? []);
  return usual.some((one) => fatigue >= one + overUsualAskedInFull) ? {} : { fatigue };
};

/** Of so many joints all are as yesterday, or each is asked about. */
const bothOrNone = 2;

/** null = yesterday is not known, or not all of it was as on ordinary days. */
export const asYesterday = ({ day, followed, mornings, baselines }: Known): AsYesterday => {
  const earlier = mornings.filter((one) => one.day < day && !one.clockDoubtful);
  const last = earlier.findLast((one) => one.day === addDays(day, -1));
  if (last?.extraPainRelief !== false || last.redFlags?.length !== 0) return null;
  const row = earlier.slice(-asYesterdayInARow);
  if (row.length === asYesterdayInARow && row.every((one) => one.via === 'as-yesterday')) return 'singly';
  const joints = followed.map((joint) => {
    const quiet = quietAnswers(last, joint);
    const usual = baselines.find((one) => one.joint === joint)?.usualPain ?? null;
    if (!quiet || usual === null) return null;
    return { joint, ...quiet, underPain: Math.min(painAskedInFull, usual + overUsualAskedInFull) };
  });
  const known = joints.filter((one) => one !== null);
  const isWhole = known.length === joints.length || followed.length > bothOrNone;
  return isWhole && known.length > 0
    ? {
        joints: known,
        ...quietFatigue(last, baselines),
        ...(last.otherJoint === 'not-worse' ? { noOtherJoint: true } : {}),
      }
    : null;
};

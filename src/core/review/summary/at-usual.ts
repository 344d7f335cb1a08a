/** How the last sessions at the dose in force were answered the next morning, as figures. */

import { withShareOfFirst } from '#core/decision/dose/volume.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import {
  type AnsweredSession,
  answersByDose,
  type LeftOutCount,
  leftOutCounts,
} from '../dose/answers-by-dose.ts';
import type { InFocus } from './in-focus.ts';

/** Two weeks at three sessions a week: a choice, no source. */
const lastSessions = 6;

/** Shares that differ by less are one dose: a quotient of loads leaves a hair. */
const keyOf = (share: number): number => Math.round(share * 10_000);

const isSameShare = (a: number, b: number): boolean => keyOf(a) === keyOf(b);

interface CountedAt {
  readonly dose: Dose;
  readonly atUsual: number;
  /** Sessions counted, at most the last six; 0 = none could be. */
  readonly of: number;
  /** First and last day of those counted; null where none was. */
  readonly days: { readonly from: Day; readonly to: Day } | null;
  /** Sessions since the first of those, at this dose or of one not known, that count neither way. */
  readonly leftOut: readonly LeftOutCount[];
}

export type AtUsualFact =
  | { readonly is: 'no-dose' }
  | (CountedAt & {
      readonly is: 'counted';
      readonly joint: Joint;
      /** Where none is counted at the dose in force: the last dose before it at which some are; null without one. */
      readonly before: CountedAt | null;
    });

interface Wanted {
  readonly record: PatientRecord;
  readonly focus: InFocus | null;
  readonly at: Moment;
  readonly settings?: SettingValues | undefined;
}

const countedAt = (
  { sessions }: PatientRecord,
  { id, dose }: PrescriptionVersion,
  share: number | null,
  answered: readonly AnsweredSession[],
): CountedAt => {
  const atVersion = new Set(
    sessions.filter(({ sets }) => sets.some((set) => set.prescriptionId === id)).map((one) => one.id),
  );
  const mine = answered.filter((one) =>
    one.share === null || share === null ? atVersion.has(one.sessionId) : isSameShare(one.share, share),
  );
  const counted = mine.filter(({ answer }) => answer.is !== 'left-out').slice(-lastSessions);
  const from = counted[0];
  return {
    dose,
    atUsual: counted.filter(({ answer }) => answer.is === 'at-usual').length,
    of: counted.length,
    days: from ? { from: from.day, to: counted.at(-1)!.day } : null,
    leftOut: leftOutCounts(from ? mine.slice(mine.indexOf(from)) : mine),
  };
};

export const atUsualFact = ({ record, focus, at, settings }: Wanted): AtUsualFact => {
  if (!focus) return { is: 'no-dose' };
  const { joint } = focus;
  const { itemId } = focus.version;
  const answered = answersByDose({ record, itemId, joint, at, settings }).sessions;
  const [inForce, ...earlier] = withShareOfFirst(
    record.prescriptions.filter((one) => one.itemId === itemId),
  ).toReversed();
  const now = countedAt(record, focus.version, inForce?.share ?? null, answered);
  const before =
    now.of > 0
      ? undefined
      : earlier
          .map((version) => countedAt(record, version, version.share, answered))
          .find(({ of }) => of > 0);
  return { is: 'counted', joint, ...now, before: before ?? null };
};

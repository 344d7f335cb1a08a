/** Flares beside the cuts made in them: whether a cut fell in one, and since when one runs or ran until lately. */
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { mornings } from '../facts/judged-session.ts';
import { flareAt } from '../facts/morning-facts.ts';
import { indexRecord } from '../facts/record-index.ts';

/** First reported day number of the flare that runs on a day, the earliest among the joints; null without one. */
const flareBeganOn = (
  record: PatientRecord,
  joints: readonly Joint[],
  day: number,
  instant: number,
): number | null => {
  const index = indexRecord(record);
  const began = joints.flatMap((joint) => flareAt(mornings(index, joint), day, instant)?.first ?? []);
  return began.length === 0 ? null : Math.min(...began);
};

/**
 * Whether one of the joints was in a reported flare when something was made or signed, as known then. What was known
 * bounds it and no day does: an instant does not say which day it was where the patient is.
 */
export const wasInFlare = (record: PatientRecord, joints: readonly Joint[], instant: number): boolean =>
  flareBeganOn(record, joints, Number.POSITIVE_INFINITY, instant) !== null;

/**
 * First day number of the flare that ended in the last `days` days; null without one, and while one runs. A
 * flare ends with an answer of no.
 */
export const flareEndedSince = (
  record: PatientRecord,
  joints: readonly Joint[],
  day: number,
  instant: number,
  days: number,
): number | null => {
  for (let back = 0; back <= days; back++) {
    const began = flareBeganOn(record, joints, day - back, instant);
    if (began !== null) return back === 0 ? null : began;
  }
  return null;
};

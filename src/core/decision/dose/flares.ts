/** Flares beside the cuts made in them: whether a cut fell in one, and since when one runs or ran until lately. */
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { mornings } from '../facts/judged-session.ts';
import { flareDaysAt } from '../facts/morning-facts.ts';
import { indexRecord } from '../facts/record-index.ts';

export const dayMilliseconds = 86_400_000;

const longestFlareOn = (
  record: PatientRecord,
  joints: readonly Joint[],
  day: number,
  instant: number,
): number => {
  const index = indexRecord(record);
  return Math.max(0, ...joints.map((joint) => flareDaysAt(mornings(index, joint), day, instant)));
};

/** Whether one of the joints was in a reported flare when a version was signed, as known then. */
export const wasInFlare = (record: PatientRecord, joints: readonly Joint[], instant: number): boolean =>
  longestFlareOn(record, joints, Math.floor(instant / dayMilliseconds), instant) > 0;

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
  if (longestFlareOn(record, joints, day, instant) > 0) return null;
  for (let back = 1; back <= days; back++) {
    const length = longestFlareOn(record, joints, day - back, instant);
    if (length > 0) return day - back - length + 1;
  }
  return null;
};

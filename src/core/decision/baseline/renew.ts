/**
 * What becomes of a baseline that no longer holds, before the facts are gathered: it follows better mornings
 * where it can, and is marked as due for review otherwise, which only a clinician ends.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Moment } from '../facts/judged-session.ts';
import { isBaselineDueForReview } from './propose-baseline.ts';
import { tightenedBaseline } from './tighten.ts';

/** The baseline that takes the place of the newest one of the joint; null where that one goes on. */
export const renewedBaseline = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settings?: SettingValues,
): Baseline | null => {
  const newest = record.baselines.findLast((row) => row.joint === joint);
  // Values of two entries at once are nobody's baseline; what follows is a row somebody set.
  if (!newest || newest.correctedPending) return null;
  if (!isBaselineDueForReview(record, joint, at, settings)) return null;
  return tightenedBaseline(record, joint, newest, at, settings) ?? { ...newest, dueForReview: true };
};

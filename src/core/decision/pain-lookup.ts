/**
 * What each answer to "pain now" would leave of today's session, worked out ahead, so that a phone
 * with no signal can say it at once without carrying the rules.
 */

import type { Joint } from '../exercises/joints.ts';
import type { PatientRecord } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Today } from './answers.ts';
import { factsFor } from './facts/facts-from-record.ts';
import type { Moment } from './facts/judged-session.ts';
import { type BeforeFacts, preSessionCheck } from './pre-session-check.ts';

export interface PainLookup {
  readonly joint: Joint;
  /** Index 0 … 10: the answer given. */
  readonly byPain: readonly Today[];
  /** "I don't know". */
  readonly whenUnknown: Today;
  /** Pain in the session that is all right, 5 … 7; absent on a page kept by an earlier release. */
  readonly acceptablePainLimit?: number;
}

export const painLookup = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settings?: SettingValues,
): PainLookup => {
  const facts: BeforeFacts = { ...factsFor(record, joint, at, settings), redFlags: [] };
  const today = (painBefore: number | null): Today =>
    preSessionCheck({ ...facts, painBefore }, settings).today;
  return {
    joint,
    byPain: Array.from({ length: 11 }, (_, pain) => today(pain)),
    whenUnknown: today(null),
    acceptablePainLimit: facts.painCeiling,
  };
};

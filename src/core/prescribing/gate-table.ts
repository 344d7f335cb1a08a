/**
 * What each answer to "pain now" would leave of today's session, worked out ahead, so that a phone
 * with no signal can say it at once without carrying the rules.
 */
import type { SettingValues } from '../clinic-choice.ts';
import type { Today } from '../engine/answers.ts';
import { type BeforeFacts, preSessionCheck } from '../engine/before-gate.ts';
import { factsFor } from '../engine/facts-from-record.ts';
import type { Moment } from '../engine/judged-session.ts';
import type { Joint } from '../joints.ts';
import type { PatientRecord } from '../model/record.ts';

export interface PainLookup {
  readonly joint: Joint;
  /** Index 0 … 10: the answer given. */
  readonly byPain: readonly Today[];
  /** "I don't know". */
  readonly whenUnknown: Today;
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
  return { joint, byPain: Array.from({ length: 11 }, (_, pain) => today(pain)), whenUnknown: today(null) };
};

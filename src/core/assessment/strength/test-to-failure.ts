/**
 * Tests to failure are sessions: the same gate before, a check the morning after, and enough hours since
 * the last session that loaded the joints. The hours are a clinic choice.
 */
import type { Today } from '#core/decision/answers.ts';
import { countUpTo } from '#core/decision/facts/count-up-to.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import type { PreSessionCheck } from '#core/decision/pre-session-check.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';

export interface TestReadiness {
  readonly ready: boolean;
  /** Whole or part hours since the last session that loaded one of the joints; null = none. */
  readonly hoursSince: number | null;
  readonly neededHours: number;
  /** Joints whose gate leaves less than a session as planned. */
  readonly heldBy: readonly { readonly joint: Joint; readonly today: Today }[];
}

const hour = 3_600_000;

export const readyForTest = (
  record: PatientRecord,
  joints: readonly Joint[],
  checks: ReadonlyMap<Joint, PreSessionCheck>,
  instant: number,
  settings?: SettingValues,
): TestReadiness => {
  const neededHours = engineSettingValues(settings)['rest-before-test-hours'];
  const index = indexRecord(record);
  let last: number | null = null;
  for (const joint of joints) {
    const list = index.sessionsOf.get(joint) ?? [];
    const session = list[countUpTo(list, instant, (one) => one.began) - 1];
    if (session && (last === null || session.began > last)) last = session.began;
  }
  const hoursSince = last === null ? null : (instant - last) / hour;
  // A joint nobody asked about at the door is not known to be fit for a test.
  const heldBy = joints.flatMap((joint) => {
    const today = checks.get(joint)?.today ?? 'none';
    return today === 'as-planned' ? [] : [{ joint, today }];
  });
  const isRested = hoursSince === null || hoursSince >= neededHours;
  return { ready: isRested && heldBy.length === 0, hoursSince, neededHours, heldBy };
};

/**
 * Which doses of a line the joints tolerated: a full session at it, judged the morning after, with no complaint of
 * any rule, of the session itself as well. `src/core/review/dose/morning-answer.ts` asks less, of the morning alone,
 * and calls it "at usual": what was tolerated was never over usual, and what was at usual need not be tolerated.
 */

import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { dayNumber } from '#core/time/day.ts';
import { decide } from '../decide.ts';
import { countUpTo } from '../facts/count-up-to.ts';
import { factsFor } from '../facts/facts-from-record.ts';
import type { IndexedSession } from '../facts/indexed-record.ts';
import { wasEasier } from '../facts/item-work.ts';
import type { Moment } from '../facts/judged-session.ts';
import { morningAfter } from '../facts/morning-after.ts';
import { indexRecord } from '../facts/record-index.ts';
import type { RuleId } from '../rules/table.ts';
import { engineSettingValues } from '../settings.ts';
import type { ToleratedDose } from './way-back.ts';

/** Rules that hold a dose without saying that the joint minded it. */
const silentOnTolerance: ReadonlySet<string> = new Set<RuleId>([
  'B0r',
  'B1',
  'B2',
  'B3',
  'C4',
  'A1',
  'D2',
  'D3',
]);

/** Sessions looked back over; far more than the days a return may reach. */
const lookBackDays = 84;

const isTolerated = (
  record: PatientRecord,
  indexed: IndexedSession,
  joints: readonly Joint[],
  at: Moment,
  settingValues?: SettingValues,
): boolean => {
  const settings = engineSettingValues(settingValues);
  const index = indexRecord(record);
  return joints.every((joint) => {
    const then = morningAfter(index, indexed, joint, at.instant, settings);
    if (typeof then === 'string') return false;
    const { reasons } = decide(factsFor(record, joint, then, settings), settings);
    return reasons.every((reason) => silentOnTolerance.has(reason.rule));
  });
};

/** One entry for each version tolerated in as many sessions as the clinic asks for, with the last day it was. */
export const toleratedDoses = (
  record: PatientRecord,
  itemId: string,
  joints: readonly Joint[],
  at: Moment,
  settings?: SettingValues,
): readonly ToleratedDose[] => {
  const index = indexRecord(record);
  const from = dayNumber(at.day) - lookBackDays;
  const least = engineSettingValues(settings)['tolerated-sessions'];
  const found = new Map<string, ToleratedDose & { readonly sessions: number }>();
  for (let place = countUpTo(index.sessions, at.instant, (one) => one.began) - 1; place >= 0; place--) {
    const indexed = index.sessions[place]!;
    if (indexed.day < from) break;
    const { session } = indexed;
    if (session.kind !== 'full' || session.recordedAt > at.instant) continue;
    const done = session.sets.filter((set) => set.itemId === itemId);
    if (wasEasier(session, done)) continue;
    const id = done[0]?.prescriptionId;
    const before = id === undefined ? undefined : found.get(id);
    const version = id === undefined || before?.sessions === least ? undefined : index.versions.get(id);
    if (version && isTolerated(record, indexed, joints, at, settings)) {
      const sessions = (before?.sessions ?? 0) + 1;
      found.set(version.id, { dose: version.dose, day: before?.day ?? indexed.day, sessions });
    }
  }
  return [...found.values()].flatMap(({ dose, day, sessions }) =>
    sessions === least ? [{ dose, day }] : [],
  );
};

/** One look at a joint at a moment: what the fact functions share, found once. */

import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';
import { dayNumber } from '#core/time/day.ts';
import type { EngineSettingValues } from '../settings.ts';
import { countUpTo } from './count-up-to.ts';
import type { RecordIndex } from './indexed-record.ts';
import { type Judged, judgedSession, type Moment } from './judged-session.ts';
import { indexRecord } from './record-index.ts';

export interface EvaluationContext {
  readonly index: RecordIndex;
  readonly joint: Joint;
  readonly instant: number;
  readonly day: number;
  readonly settings: EngineSettingValues;
  readonly judged: Judged;
  readonly baseline: (Baseline & { readonly setDay: number }) | null;
}

export const evaluationContext = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settings: EngineSettingValues,
): EvaluationContext => {
  const index = indexRecord(record);
  const day = dayNumber(at.day);
  const baselines = index.baselinesOf.get(joint) ?? [];
  return {
    index,
    joint,
    instant: at.instant,
    day,
    settings,
    judged: judgedSession(index, joint, at, settings),
    baseline: baselines[countUpTo(baselines, day, (one) => one.setDay) - 1] ?? null,
  };
};

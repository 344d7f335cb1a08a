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
  readonly baseline: SetBaseline | null;
  /** Usual pain this plan began with, or that a clinician last acknowledged; null while none was known. */
  readonly firstUsualPain: number | null;
}

type SetBaseline = Baseline & { readonly setDay: number };

/** Of the baselines set by now: from the last acknowledged rise on, otherwise from the one the plan began with. */
const firstUsualPainOf = (known: readonly SetBaseline[], planBegan: number): number | null => {
  const acknowledged = known.findLastIndex((one) => one.riseAcknowledged);
  const from = acknowledged >= 0 ? acknowledged : countUpTo(known, planBegan, (one) => one.setDay) - 1;
  return known.slice(Math.max(0, from)).find((one) => one.usualPain !== null)?.usualPain ?? null;
};

export const evaluationContext = (
  record: PatientRecord,
  joint: Joint,
  at: Moment,
  settings: EngineSettingValues,
): EvaluationContext => {
  const index = indexRecord(record);
  const day = dayNumber(at.day);
  const baselines = index.baselinesOf.get(joint) ?? [];
  const known = baselines.slice(
    0,
    countUpTo(baselines, day, (one) => one.setDay),
  );
  const planBegan =
    record.planBeganOn === undefined ? Number.NEGATIVE_INFINITY : dayNumber(record.planBeganOn);
  return {
    index,
    joint,
    instant: at.instant,
    day,
    settings,
    judged: judgedSession(index, joint, at, settings),
    baseline: known.at(-1) ?? null,
    firstUsualPain: firstUsualPainOf(known, planBegan),
  };
};

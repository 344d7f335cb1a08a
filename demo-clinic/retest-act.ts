/** A measure is planned to be taken again, some days ahead and in a rhythm. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { planRetest } from '#data/assessment/retest-plans.ts';

export interface RetestAct {
  readonly does: 'plan-retest';
  readonly measure: Measurement['kind'];
  readonly inDays: number;
  readonly everyDays: number;
}

export const plansRetest = (
  access: Access,
  patientId: string,
  { measure, inDays, everyDays }: RetestAct,
): Promise<string> =>
  planRetest(access, patientId, { measure, dueOn: addDays(access.day, inDays), everyDays });

/**
 * What a record is decided from, read by one statement: the record, the plan that stands, the doses proposed
 * before, what was approved ahead. `since` is the first day of the log, as the record is asked for it.
 */
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { preApprovalRows } from '../episode/limits-and-pre-approvals.ts';
import { engineWindowDays, recordQueries } from '../patients/record-queries.ts';
import { planQueries } from '../plan/plan-queries.ts';
import { proposalRows } from './decisions.ts';
import { settingsIds } from './settings-stored.ts';

const together = togetherOf([
  ...recordQueries,
  ...planQueries,
  { query: proposalRows },
  { query: settingsIds },
  { query: preApprovalRows },
]);

/** Does the work on what was read. */
export const onWholeRecord = <T>(
  access: Access,
  patientId: string,
  work: () => Promise<T>,
  since: Day = addDays(access.day, -engineWindowDays),
): Promise<T> => readTogether(access, patientId, together, work, { since });

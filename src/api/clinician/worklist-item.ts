/** An item of the worklist as a screen shows it. */
import type { Day } from '#core/time/day.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import { workOf } from '#core/worklist/work.ts';
import type { StoredItem } from '#data/worklist/worklist-cells.ts';

export const shownItem = (row: StoredItem, today: Day) => ({
  key: row.key,
  kind: row.kind,
  sentence: sentenceOf({ kind: row.kind, joint: row.joint as never, facts: row.facts }, today),
  since: row.since,
  work: workOf(row),
  facts: row.facts,
  joint: row.joint,
  decisionId: row.decisionId,
  acknowledgedBy: row.acknowledgedBy,
  assignedTo: row.assignedTo,
  assignedName: row.assignedName,
});

/** The columns of an item as a page of the worklist reads them, and their order on a line. */
import type { Cells } from '../database/nested-rows.ts';
import type { worklistItem } from '../schema/schema.ts';

/** As a page reads it: the instant it waited for is behind it. */
export type StoredItem = Omit<typeof worklistItem.$inferSelect, 'showsAt'>;

/** Every column but the clinic and the patient, which the line has, and the instant it waited for. */
export const itemColumnsOf = (listed: typeof worklistItem) =>
  [
    listed.key,
    listed.kind,
    listed.rank,
    listed.since,
    listed.showsFrom,
    listed.joint,
    listed.decisionId,
    listed.facts,
    listed.acknowledgedBy,
    listed.assignedTo,
    listed.assignedName,
    listed.snoozedUntil,
  ] as const;

export type ListedItem = Omit<StoredItem, 'clinicId' | 'patientId'>;

export const itemIn = (cells: Cells): ListedItem => {
  const [key, kind, rank, since, showsFrom, joint, decisionId, facts, ...handling] =
    cells as readonly string[];
  const [acknowledgedBy, assignedTo, assignedName, snoozedUntil] = handling as (string | null)[];
  return {
    key: key!,
    kind: kind as StoredItem['kind'],
    rank: Number(rank),
    since: Number(since),
    showsFrom: showsFrom!,
    joint: joint ?? null,
    decisionId: decisionId ?? null,
    facts: JSON.parse(facts!) as StoredItem['facts'],
    acknowledgedBy: acknowledgedBy ?? null,
    assignedTo: assignedTo ?? null,
    assignedName: assignedName ?? null,
    snoozedUntil: snoozedUntil ?? null,
  };
};

export const byDanger = (a: ListedItem, b: ListedItem): number =>
  a.rank - b.rank || a.since - b.since || (a.key < b.key ? -1 : 1);

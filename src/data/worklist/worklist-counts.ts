/** The numbers above the worklist, added up from where patients stand. */

import type { Day } from '#core/time/day.ts';
import { type WorklistGroup, worklistGroups } from '#core/worklist/groups.ts';
import { dangerOf, groupStanding, type Stands } from '#core/worklist/standing.ts';
import type { Access } from '../access.ts';
import { standingsOf, type Tally, talliesOf } from './standings.ts';
import type { Filter } from './what-shows.ts';
import { listedOfSite } from './worklist.ts';

/** Those of the reader, and those kept to teams the reader is not in. */
const readerTallies = async (access: Access, closed: ReadonlySet<string>) => {
  const all = await talliesOf(access);
  const kept = await standingsOf(access, [...closed]);
  const taken = new Map<Stands, number>();
  for (const stands of kept) taken.set(stands, (taken.get(stands) ?? 0) + 1);
  return {
    patients: all.reduce((sum, { patients }) => sum + patients, 0),
    mine: all.map(({ stands, patients }) => ({ stands, patients: patients - (taken.get(stands) ?? 0) })),
    others: [...taken].map(([stands, patients]): Tally => ({ stands: dangerOf(stands), patients })),
  };
};

const isListed = ({ awake }: Stands, { kind, assignedTo }: Filter): boolean =>
  awake.some(([of, to]) => (!kind || of === kind) && (!assignedTo || to === assignedTo));

/** How many patients have an item that shows today, and how many patients there are. */
export const worklistCounts = async (access: Access, filter: Filter) => {
  const { patients, mine, others } = await readerTallies(access, filter.closed ?? new Set());
  const found = [...mine, ...others].filter(({ stands }) => isListed(stands, filter));
  return {
    listed: filter.siteId
      ? await listedOfSite(access, filter)
      : found.reduce((sum, one) => sum + one.patients, 0),
    patients,
  };
};

export interface GroupCount {
  readonly group: WorklistGroup;
  readonly count: number;
  /** First day on which something of a snoozed or paused patient comes back. */
  readonly until: Day | null;
  /** Colleagues who have items of these patients. */
  readonly names: readonly string[];
}

const namesOf = ({ awake, snoozedNames }: Stands): readonly string[] => [
  ...awake.flatMap(([, , name]) => name ?? []),
  ...snoozedNames,
];

/** How many patients stand in each group for this reader. */
export const groupCounts = async (
  access: Access,
  closed: ReadonlySet<string>,
): Promise<readonly GroupCount[]> => {
  const { mine, others } = await readerTallies(access, closed);
  const { actorId, day } = access;
  const standing = [
    ...mine.map((one) => ({ ...one, group: groupStanding(one.stands, true, actorId, day) })),
    ...others.map((one) => ({ ...one, group: groupStanding(one.stands, false, actorId, day) })),
  ].filter(({ patients }) => patients > 0);
  return worklistGroups.map((group) => {
    const own = standing.filter((one) => one.group === group);
    const days = own.flatMap(({ stands: { pausedUntil, snoozedUntil } }) =>
      group === 'paused' ? (pausedUntil ?? []) : (snoozedUntil ?? []),
    );
    return {
      group,
      count: own.reduce((sum, { patients }) => sum + patients, 0),
      until: days.sort()[0] ?? null,
      names: [...new Set(own.flatMap(({ stands }) => namesOf(stands)))].sort(),
    };
  });
};

/** The numbers above the worklist as they are kept, and the same counted patient by patient. */
import { worklistGroups } from '#core/worklist/groups.ts';
import { type WorklistItemKind, worklistItemKinds } from '#core/worklist/item.ts';
import type { Access } from '#data/access.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { groupCounts, worklistCounts } from '#data/worklist/worklist-counts.ts';
import { groupLines } from '#data/worklist/worklist-groups.ts';

type Closed = ReadonlySet<string>;
const nobody: Closed = new Set();
const kinds: readonly (WorklistItemKind | null)[] = [null, ...worklistItemKinds];
const everybody = 1000;

export const keptNumbers = async (access: Access, closed: Closed = nobody) => {
  const listed: number[] = [];
  for (const kind of kinds)
    for (const assignedTo of [null, access.actorId])
      listed.push((await worklistCounts(access, { kind, assignedTo, closed })).listed);
  return { listed, groups: await groupCounts(access, closed) };
};

export const countedNumbers = async (access: Access, closed: Closed = nobody) => {
  const listed: number[] = [];
  for (const kind of kinds)
    for (const assignedTo of [null, access.actorId]) {
      const query = { after: null, limit: everybody, kind, assignedTo, closed };
      listed.push((await worklistPage(access, query)).lines.length);
    }
  const lines = await groupLines(access, closed);
  const groups = worklistGroups.map((group) => {
    const mine = lines.filter((line) => line.group === group);
    return {
      group,
      count: mine.length,
      until: mine.flatMap(({ until }) => until ?? []).sort()[0] ?? null,
      names: [...new Set(mine.flatMap(({ assignedNames }) => assignedNames))].sort(),
    };
  });
  return { listed, groups };
};

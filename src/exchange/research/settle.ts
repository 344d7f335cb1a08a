/**
 * Widening until nobody stands alone: what is alike at a level and many enough is settled there, the rest goes on to
 * the next, wider level. Whoever knows the rule learns no more by it: what is written together was settled together.
 */
export interface Settled<T> {
  readonly label: readonly string[];
  readonly members: readonly T[];
}

const alikeBy = <T>(list: readonly T[], labelOf: (one: T) => readonly string[]): readonly Settled<T>[] => {
  const groups = new Map<string, { readonly label: readonly string[]; readonly members: T[] }>();
  for (const one of list) {
    const label = labelOf(one);
    const key = JSON.stringify(label);
    const group = groups.get(key) ?? { label, members: [] };
    group.members.push(one);
    groups.set(key, group);
  }
  return [...groups.values()];
};

export const settle = <T>(
  list: readonly T[],
  levels: readonly ((one: T) => readonly string[])[],
  isEnough: (members: readonly T[]) => boolean,
): { readonly settled: readonly Settled<T>[]; readonly alone: readonly T[] } => {
  const settled: Settled<T>[] = [];
  let rest = list;
  for (const level of levels) {
    const groups = alikeBy(rest, level);
    settled.push(...groups.filter(({ members }) => isEnough(members)));
    rest = groups.filter(({ members }) => !isEnough(members)).flatMap(({ members }) => members);
  }
  return { settled, alone: rest };
};

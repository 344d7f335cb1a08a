/** What one piece of work has read of a file, and what it has worked out from that. */

export type Rows = readonly unknown[];

/** Rows as one statement gave them. */
interface Seen {
  readonly sql: string;
  readonly asked: string;
  readonly rows: Rows;
}

interface Worked {
  readonly value: unknown;
  readonly from: readonly Seen[];
}

export interface Known {
  /** By statement, then by what it was asked with. */
  readonly rows: Map<string, Map<string, Rows>>;
  readonly worked: Map<string, Worked>;
  /** What is being worked out now, each with what it has seen so far. */
  readonly under: Set<Seen[]>;
}

/** One record needs a handful; a write that goes over a whole clinic shall not hold them all. */
const mostWorked = 50;

export const nothingKnown = (): Known => ({ rows: new Map(), worked: new Map(), under: new Set() });

/** To all that is being worked out now. */
export const noteSeen = (known: Known, seen: Seen): void => {
  for (const under of known.under) under.push(seen);
};

export const forgetAll = (known: Known | null): void => {
  known?.rows.clear();
  known?.worked.clear();
};

const isStill = ({ rows }: Known, seen: Seen): boolean => rows.get(seen.sql)?.get(seen.asked) === seen.rows;

/** Kept only when it was worked out in one go: what a write changed under it is worked out anew. */
export const workedOut = async <T>(known: Known, name: string, make: () => Promise<T>): Promise<T> => {
  const found = known.worked.get(name);
  if (found?.from.every((seen) => isStill(known, seen))) {
    for (const seen of found.from) noteSeen(known, seen);
    return found.value as T;
  }
  const from: Seen[] = [];
  known.under.add(from);
  try {
    const value = await make();
    if (known.worked.size >= mostWorked) known.worked.clear();
    known.worked.set(name, { value, from });
    return value;
  } finally {
    known.under.delete(from);
  }
};

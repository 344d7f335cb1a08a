/** Counts of later-than-earlier pairs that rise, fall or tie; the trend and overlap tests stand on these. */
export interface PairSigns {
  readonly up: number;
  readonly down: number;
  readonly ties: number;
  /** Up less down. */
  readonly s: number;
}

const counted = (up: number, down: number, ties: number): PairSigns => ({ up, down, ties, s: up - down });

/** All pairs inside one series, each later value against each earlier one. */
export const signsWithin = (values: readonly number[]): PairSigns => {
  let up = 0;
  let down = 0;
  for (let later = 1; later < values.length; later += 1) {
    const value = values[later] as number;
    for (let earlier = 0; earlier < later; earlier += 1) {
      const other = values[earlier] as number;
      if (value > other) up += 1;
      else if (value < other) down += 1;
    }
  }
  return counted(up, down, (values.length * (values.length - 1)) / 2 - up - down);
};

/** All pairs between two phases, each value after against each value before. */
export const signsBetween = (before: readonly number[], after: readonly number[]): PairSigns => {
  let up = 0;
  let down = 0;
  for (const value of after) {
    for (const other of before) {
      if (value > other) up += 1;
      else if (value < other) down += 1;
    }
  }
  return counted(up, down, before.length * after.length - up - down);
};

/** Sizes of the groups of equal values, single values left out. */
export const tieGroups = (values: readonly number[]): readonly number[] => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].filter((count) => count > 1);
};

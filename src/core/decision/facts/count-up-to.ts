/** Where a day or an instant falls in a list that is sorted by it, found by halving. */

/** How many of a list sorted by `key` lie at or below `limit`. */
export const countUpTo = <T>(list: readonly T[], limit: number, key: (one: T) => number): number => {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (key(list[middle]!) <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
};

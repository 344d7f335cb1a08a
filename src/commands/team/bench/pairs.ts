/**
 * Two ways of doing the same, measured in turn so that a slow minute of the machine falls on both. The
 * ratio is the median of the ratios of the pairs; its interval holds the true median in 95 of 100 runs
 * and rests on order alone, so that a few outliers cannot move it.
 */
export interface Side {
  /** Prepares what is not timed; returns the work that is. */
  readonly ready: (pair: number) => Promise<() => unknown>;
}

export interface Paired {
  readonly pairs: number;
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  readonly firstMs: number;
  readonly secondMs: number;
}

export const leastPairs = 30;
const warmUpPairs = 10;
/** A few milliseconds apiece make thirty pairs too few to tell anything on a machine that does other work. */
const leastMs = 8000;

export const medianOf = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

export const percentileOf = (values: readonly number[], percent: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil((percent / 100) * sorted.length) - 1)]!;
};

/** Places of the order statistics that bound the median: the binomial's normal approximation. */
const medianBounds = (values: readonly number[]): readonly [number, number] => {
  const sorted = [...values].sort((a, b) => a - b);
  const reach = (1.96 * Math.sqrt(sorted.length)) / 2;
  const low = Math.max(0, Math.floor(sorted.length / 2 - reach) - 1);
  const high = Math.min(sorted.length - 1, Math.ceil(sorted.length / 2 + reach));
  return [sorted[low]!, sorted[high]!];
};

const timed = async (work: () => Promise<unknown> | unknown): Promise<number> => {
  const began = performance.now();
  await work();
  return performance.now() - began;
};

/** At least thirty pairs and eight seconds of them, and more until `until`. The side that goes first changes from pair to pair. */
export const measurePairs = async (first: Side, second: Side, until: number): Promise<Paired> => {
  const times: [number, number][] = [];
  const last = Math.max(until, performance.now() + leastMs);
  for (let pair = -warmUpPairs; pair < leastPairs || performance.now() < last; pair++) {
    const place = pair + warmUpPairs;
    const measured: [number, number] = [0, 0];
    for (const at of place % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const)) {
      measured[at] = await timed(await (at === 0 ? first : second).ready(place));
    }
    if (pair >= 0) times.push(measured);
  }
  return pairedOf(times);
};

export const pairedOf = (times: readonly (readonly [number, number])[]): Paired => {
  const ratios = times.map(([a, b]) => a / b);
  const [low, high] = medianBounds(ratios);
  return {
    pairs: times.length,
    ratio: medianOf(ratios),
    low,
    high,
    firstMs: medianOf(times.map(([a]) => a)),
    secondMs: medianOf(times.map(([, b]) => b)),
  };
};

/** Repeatable random numbers for trials of the engine: the same seed gives the same trial. */
export interface Seeded {
  /** From 0 up to, not including, 1. */
  readonly next: () => number;
  /** Whole number from 0 up to, not including, `below`. */
  readonly below: (below: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
  /** Normal with mean 0 and deviation 1. */
  readonly normal: () => number;
}

/** Thirty-two bits of state, stepped by a fixed odd constant and mixed twice. */
export const seeded = (seed: number): Seeded => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (limit: number): number => Math.floor(next() * limit);
  return {
    next,
    below,
    chance: (probability) => next() < probability,
    pick: (list) => list[below(list.length)]!,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
};

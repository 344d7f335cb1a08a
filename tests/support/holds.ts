/** A property over drawn values; drawn from one fixed seed, which a failure prints with the values. */
import fc from 'fast-check';

type Drawn<T extends readonly unknown[]> = [
  ...arbitraries: { [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: ((...drawn: T) => boolean) | ((...drawn: T) => void),
];

/** Fails unless it holds for so many draws: no false answer and nothing thrown. */
export const holdsIn = <T extends [unknown, ...unknown[]]>(numRuns: number, ...property: Drawn<T>): void =>
  fc.assert(fc.property<T>(...property), { seed: 20260131, numRuns });

/** The same for 10,000 draws. */
export const holds = <T extends [unknown, ...unknown[]]>(...property: Drawn<T>): void =>
  holdsIn<T>(10_000, ...property);

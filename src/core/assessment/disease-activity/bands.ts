/**
 * Bands of an index: each row holds up to its upper bound, and says whether the bound belongs to it.
 *
 * Scores are sums of decimals, so a bound is compared with a tolerance of one billionth: 1 + 1 + 0.4 + 0.4
 * is 2.8 here, as it is on paper.
 */
import { exceeds } from '../change/change-beyond-error.ts';

export interface UpperBand<B extends string> {
  readonly band: B;
  readonly upTo: number;
  readonly including: boolean;
}

export const bandOf = <B extends string>(score: number, bands: readonly UpperBand<B>[], above: B): B =>
  bands.find((row) => (row.including ? !exceeds(score, row.upTo) : exceeds(row.upTo, score)))?.band ?? above;

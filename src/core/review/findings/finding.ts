/**
 * What the series of a review says, as sentences with figures. Each names the rows of the registry it
 * was worked out with and exactly what they were given, so that anybody can work it out again.
 * A description of what was logged; never a prediction, and nothing the engine reads.
 */
import type { Working } from '#core/calculations/working.ts';

export interface Finding {
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
  /** Empty where nothing could be worked out; the sentences say why. */
  readonly workings: readonly Working[];
}

/** Two decimals, with a minus sign that is one; what rounds to nothing is 0. */
export const twoDecimals = (value: number): string => {
  const rounded = Math.round(value * 100) / 100;
  return (rounded === 0 ? '0' : rounded.toFixed(2)).replace('-', '−');
};

export const wholePercent = (share: number): string => `${Math.round(share * 100)} %`;

/** A p value is never said to be nothing. */
export const pInWords = (p: number): string => (p < 0.001 ? 'p under 0.001' : `p ${p.toFixed(3)}`);

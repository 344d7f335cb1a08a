/** The shape every published repetition equation is written in. */
import type { Citation } from '#core/sources/citation.ts';
import type { SourceKey } from '#core/sources/index.ts';

export type EquationId =
  | 'epley'
  | 'brzycki'
  | 'lombardi'
  | 'mayhew'
  | 'oconner'
  | 'wathan'
  | 'lander'
  | 'kemmler';

export interface RepetitionEquation {
  readonly id: EquationId;
  readonly title: string;
  /** With w for the load in kg and r for repetitions to failure. */
  readonly formula: string;
  /** Repetitions it is shown for, both ends inclusive. */
  readonly fromRepetitions: number;
  readonly toRepetitions: number;
  /** One-repetition maximum divided by the load lifted. */
  readonly factor: (repetitions: number) => number;
  /** Repetitions at a percentage of the maximum; null where the formula cannot reach that percentage. */
  readonly repetitionsAt: (percent: number) => number | null;
  /** Lowest percentage of the maximum the formula can return however many repetitions; null = none. */
  readonly floorPercent: number | null;
  readonly population: string;
  /** Error as published; null where none was found. */
  readonly errorReported: string | null;
  readonly citations: readonly Citation[];
}

/** Error of the group of six classical equations; no figure was found for one of them alone. */
export const groupOfSixError =
  'bench press, 4–10 repetitions, 31 men of 22 years: standard error 2.7–3.2 kg for the group of six equations';

export const groupOfSixCitation: Citation = {
  source: 'lacio-bench-press',
  locator: 'abstract',
  mark: 'seen',
  remark: 'Young men; r² .94–.96. Says nothing of painful joints or of other lifts.',
};

/** The classical formulas were read where others list them, not in their first printing. */
export const listedFormula = (source: SourceKey, range: string): Citation => ({
  source,
  locator: 'formula, as restated on a list of eight equations',
  mark: 'second-hand',
  remark: `Shown for ${range} repetitions; that range is from memory.`,
});

/**
 * How a figure is known. Every number a rule uses names its source, the place in it, and how
 * it was seen, so that a clinician can judge how far to trust it.
 */
import type { SourceKey } from './index.ts';

export const marks = [
  'seen', // read on a stored page: mostly an abstract or a table, not the full paper
  'second-hand', // read where somebody other than the authors restates it
  'memory', // recalled, no page seen; must be labelled wherever it is shown
  'computed', // produced here by arithmetic from cited figures
  'design', // a choice of this project; no source fixes it
  'common-practice', // a fact of the trade with no source
] as const;
export type Mark = (typeof marks)[number];

export interface Citation {
  readonly source: SourceKey;
  /** Table, page, section or equation. */
  readonly locator: string;
  readonly mark: Mark;
  /** What it says or does not say for this use, in our own words. */
  readonly remark?: string;
}

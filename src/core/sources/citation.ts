/**
 * How a figure is known. Every number a rule uses names its source, the place in it, and how
 * it was seen, so that a clinician can judge how far to trust it.
 */

export const marks = [
  'seen', // read on a stored page: mostly an abstract or a table, not the full paper
  'second-hand', // read where somebody other than the authors restates it
  'memory', // recalled, no page seen; must be labelled wherever it is shown
  'computed', // produced here by arithmetic from cited figures
  'design', // a choice of this project; no source fixes it
  'common-practice', // a fact of the trade with no source
] as const;
export type Mark = (typeof marks)[number];

export interface Source {
  readonly authors: string;
  readonly year: number | null;
  readonly title: string;
  /** Journal, book, standard body. */
  readonly container?: string;
  /** DOI, registry number or address without a scheme. */
  readonly identifier?: string;
  readonly kind:
    | 'trial'
    | 'review'
    | 'guideline'
    | 'standard'
    | 'handbook'
    | 'study'
    | 'dataset'
    | 'practice';
}

export interface Citation<K extends string = string> {
  readonly source: K;
  /** Table, page, section or equation. */
  readonly locator: string;
  readonly mark: Mark;
  /** What it says or does not say for this use, in our own words. */
  readonly remark?: string;
}

/** One line of the working a page can show under a proposal. */
import type { SourceKey } from '../sources/index.ts';

export interface WorkingLine {
  readonly label: string;
  /** How the value came about, in words and figures. */
  readonly how: string;
  readonly value: number | null;
  readonly unit: string;
  readonly source: SourceKey | 'clinic-choice' | 'arithmetic' | 'clinician';
}

/** A figure for a sentence: two decimals at most, no trailing zeros. */
export const shown = (value: number): string => String(Number(value.toFixed(2)));

/** One line of the working a page can show under a proposal. */
import type { StrengthSource } from '../sources/strength.ts';

export interface WorkingLine {
  readonly label: string;
  /** How the value came about, in words and figures. */
  readonly how: string;
  readonly value: number | null;
  readonly unit: string;
  readonly source: StrengthSource | 'clinic-choice' | 'arithmetic' | 'clinician';
}

/** A figure for a sentence: two decimals at most, no trailing zeros. */
export const shown = (value: number): string => String(Number(value.toFixed(2)));

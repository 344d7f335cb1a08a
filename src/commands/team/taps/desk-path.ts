/** A path at the desk: who does it with what, and how what then stands in the file is told. */
import type { Locator, Page } from 'playwright-core';

/** Counts what it does. A choice out of a list and a text are a field each, the pointer's presses are taps. */
export interface Hand {
  readonly press: (what: Locator) => Promise<void>;
  readonly fill: (what: Locator, text: string) => Promise<void>;
  readonly choose: (what: Locator, value: string) => Promise<void>;
}

export interface DeskPath {
  readonly path: string;
  /** The page it begins on; left out = the worklist. */
  readonly from?: string;
  readonly mostTaps: number;
  /** Left out where none is typed into or the path is not measured by them. */
  readonly mostFields?: number;
  readonly mostPages: number;
  readonly walk: (page: Page, hand: Hand) => Promise<void>;
  /** What is missing in the file afterwards, in words; null = all of it stands there. */
  readonly differs: (file: string) => string | null;
}

export const differsIn = (facts: Readonly<Record<string, boolean>>): string | null => {
  const missing = Object.entries(facts).flatMap(([what, isThere]) => (isThere ? [] : what));
  return missing.length > 0 ? `not in the file: ${missing.join(', ')}` : null;
};

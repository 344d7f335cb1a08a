/** What a measure looks like over the course of care: its figures by day, its error and its cut, without a scale. */
import type { Day } from '#core/time/day.ts';

/** One figure, or the range that equations give: a range is never drawn as a point. */
export type Figure = number | { readonly low: number; readonly high: number };

interface Point {
  readonly day: Day;
  readonly figure: Figure;
}

interface Course {
  /** null = the line has one course. */
  readonly name: string | null;
  /** Oldest first. */
  readonly points: readonly Point[];
}

export interface Drawn {
  readonly courses: readonly Course[];
  /** Of every figure; empty = none. */
  readonly unit: string;
  /** Words for figures that are grades. */
  readonly grades?: readonly string[];
  /** A difference from the first reading up to this is not called a change; null = none is on file. */
  readonly error: number | null;
  /** A norm or cut that holds for this person; null = none does. */
  readonly cut: { readonly at: number; readonly words: string } | null;
  /** null = neither is called better. */
  readonly better: 'higher' | 'lower' | null;
}

/** A course for each name, in the order in which the names first stand; of one day the last row holds. */
export const coursesByName = (rows: readonly (Point & { readonly name: string })[]): readonly Course[] => {
  const courses = new Map<string, Map<Day, Point>>();
  for (const { name, day, figure } of rows)
    courses.set(name, (courses.get(name) ?? new Map<Day, Point>()).set(day, { day, figure }));
  return [...courses].map(([name, points]) => ({ name, points: [...points.values()] }));
};

/** What of it a measure says; the points are its rows. */
export type HowDrawn = Pick<Drawn, 'unit' | 'error' | 'cut' | 'better'>;

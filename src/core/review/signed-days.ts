/** Days on which doses were signed, over all exercises, each told as what is new in it. */
import type { Day } from '../time/day.ts';
import type { DoseStep } from './dose/dose-course.ts';

export interface SignedDay {
  readonly day: Day;
  readonly steps: readonly string[];
}

/** Oldest first. What acted at once within a signed band, or was eased back, is no new signature. */
export const signedDays = (
  steps: readonly Pick<DoseStep, 'from' | 'way' | 'inShort'>[],
): readonly SignedDay[] => {
  const days = new Map<Day, string[]>();
  for (const { from, way, inShort } of steps)
    if (way === 'signed') days.set(from, [...(days.get(from) ?? []), inShort]);
  return [...days].map(([day, told]) => ({ day, steps: told })).toSorted((a, b) => (a.day < b.day ? -1 : 1));
};

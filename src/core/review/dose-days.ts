/** Days on which doses changed, over all exercises, each told as what is new in it. */
import type { Day } from '../time/day.ts';
import type { DoseStep } from './dose/dose-course.ts';

export interface DoseDay {
  readonly day: Day;
  /** Signed that day; otherwise it acted at once within what was signed, or was eased back. */
  readonly isSigned: boolean;
  readonly steps: readonly string[];
}

/** Oldest first; of one day what was signed before what was not. */
export const doseDays = (
  steps: readonly Pick<DoseStep, 'from' | 'way' | 'inShort'>[],
): readonly DoseDay[] => {
  const days = new Map<string, DoseDay>();
  for (const { from: day, way, inShort } of steps) {
    const isSigned = way === 'signed';
    const key = `${day} ${isSigned ? 0 : 1}`;
    days.set(key, { day, isSigned, steps: [...(days.get(key)?.steps ?? []), inShort] });
  }
  return [...days].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
};

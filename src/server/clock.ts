/**
 * Two clocks. Security (sessions, codes, rate limits) always uses the system clock. Clinical days
 * use the clinical clock, which equals it except in the demo, where it starts at a fixed instant
 * and may be moved forward.
 */
export interface ClinicalClock {
  readonly now: () => number;
  /** Clinical minus system time, for pages that tell a phone what day it is. */
  readonly offset: () => number;
  /** Moves forward to an instant; a move back is refused. */
  readonly moveTo: (instant: number) => boolean;
}

export const clinicalClock = (start: number | null): ClinicalClock => {
  let offset = start === null ? 0 : start - Date.now();
  return {
    now: () => Date.now() + offset,
    offset: () => offset,
    moveTo: (instant) => {
      if (instant < Date.now() + offset) return false;
      offset = instant - Date.now();
      return true;
    },
  };
};

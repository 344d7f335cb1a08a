import type { Day } from '#core/time/day.ts';

/** A planned session of a signed programme; ordered rest and agreed breaks are not planned sessions. */
export interface PlannedSession {
  readonly day: Day;
}

/** The newest flare of a joint as the patient reported it, still going on or over, within a stretch of days. */
import type { JointMorning } from '#core/decision/facts/indexed-record.ts';
import { flareAt } from '#core/decision/facts/morning-facts.ts';
import { type Day, dayFromNumber, dayNumber } from '#core/time/day.ts';

/** Looked back over, for the flare and for what changed before it; common practice, no source. */
export const flareNoteDays = 56;

export interface FlareCourse {
  /** First and last day on which it was reported. */
  readonly first: Day;
  readonly last: Day;
  /** The patient has not said that it is over. */
  readonly isOpen: boolean;
}

/** null: none was reported in that time. */
export const flareCourse = (
  list: readonly JointMorning[],
  today: Day,
  instant: number,
): FlareCourse | null => {
  const now = dayNumber(today);
  for (let back = 0; back < flareNoteDays; back++) {
    const span = flareAt(list, now - back, instant);
    if (span && span.last <= now - flareNoteDays) return null;
    if (span) return { first: dayFromNumber(span.first), last: dayFromNumber(span.last), isOpen: back === 0 };
  }
  return null;
};

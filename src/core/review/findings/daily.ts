/**
 * Load and morning pain of each day of a review, side by side. A day without a session counts as a rest
 * only when the patient was heard from that day or the next morning and no session was planned; any
 * other silent day is unknown, and unknown is never no load.
 */
import type { PlannedSession } from '#core/prescribing/programme/planned-session.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { SessionLoad } from '../load-of-session.ts';
import type { ReviewRow, ReviewSeries } from '../series.ts';

export interface DailySeries {
  readonly load: readonly (number | null)[];
  readonly pain: readonly (number | null)[];
}

const painOf = (row: ReviewRow | undefined): number | null =>
  typeof row?.morning?.pain === 'number' ? row.morning.pain : null;

/** Loads of a day add up, save for the load picked up, of which the highest counts. */
const loadOf = (loads: readonly SessionLoad[], isHighest: boolean): number | null => {
  const known = loads.flatMap((load) => (load.value === null ? [] : [load.value]));
  if (known.length < loads.length) return null;
  return isHighest ? Math.max(...known) : known.reduce((sum, value) => sum + value, 0);
};

export const dailySeries = (series: ReviewSeries, planned: readonly PlannedSession[]): DailySeries => {
  const rows = new Map(series.rows.map((row) => [row.day, row]));
  const due = new Set(planned.map((session) => session.day));
  const load: (number | null)[] = [];
  const pain: (number | null)[] = [];
  for (let day: Day = series.since; day <= series.today; day = addDays(day, 1)) {
    const row = rows.get(day);
    const isAnswered = painOf(row) !== null || painOf(rows.get(addDays(day, 1))) !== null;
    const isRest = isAnswered && !due.has(day);
    load.push(row && row.loads.length > 0 ? loadOf(row.loads, series.measure === 'load') : isRest ? 0 : null);
    pain.push(painOf(row));
  }
  return { load, pain };
};

/** The mornings on which a pain was given, oldest first. */
export const painMornings = (series: ReviewSeries): readonly { readonly day: Day; readonly pain: number }[] =>
  series.rows.flatMap((row) => {
    const pain = painOf(row);
    return pain === null ? [] : [{ day: row.day, pain }];
  });

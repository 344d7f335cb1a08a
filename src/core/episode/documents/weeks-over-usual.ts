/**
 * Whether a joint was over its usual pain for weeks: then a letter asks for something. The counts are a
 * choice of this project (no source): 5 mornings of the last 14 days, and 2 in each of the two weeks, so
 * that neither one bad week nor one bad morning in each asks a doctor.
 */
import { type Day, daysBetween } from '../../time/day.ts';

const weekDays = 7;
const lookedBackDays = 2 * weekDays;
const overInAll = 5;
const overInEachWeek = 2;

export interface WeeksOverUsual {
  readonly over: number;
  /** Mornings of the two weeks with an answer. */
  readonly answered: number;
  readonly top: number;
}

interface Scored {
  readonly day: Day;
  readonly pain: number;
}

/** `top` is the upper end of usual pain; null where no usual pain is set, and then nothing is over it. */
export const weeksOverUsual = (
  mornings: readonly Scored[],
  top: number | null,
  today: Day,
): WeeksOverUsual | null => {
  if (top === null) return null;
  const ago = ({ day }: Scored) => daysBetween(day, today);
  const lately = mornings.filter((one) => ago(one) >= 0 && ago(one) < lookedBackDays);
  const over = lately.filter(({ pain }) => pain > top);
  const thisWeek = over.filter((one) => ago(one) < weekDays).length;
  const isLong =
    over.length >= overInAll && thisWeek >= overInEachWeek && over.length - thisWeek >= overInEachWeek;
  return isLong ? { over: over.length, answered: lately.length, top } : null;
};

/** How much more a dose asks than the one in force, where it is more than a step. */
import { largeStepPercent, shareOf } from '#core/decision/dose/volume.ts';
import { shareOfWeek } from './changes-from-in-force.ts';
import type { Dose } from './dose.ts';

export interface AskedMore {
  /** Repetitions, sets and load together, in percent of the dose in force; null = not over a step, or not known. */
  readonly sessionPercent: number | null;
  /** Of a week, where more sessions are what makes it more; null = not over a step, or not known. */
  readonly weekPercent: number | null;
}

const overAStep = (share: number | null): number | null => {
  if (share === null) return null;
  const percent = Math.round((share - 1) * 100);
  return percent > largeStepPercent ? percent : null;
};

/** A tenth more in all is named, as a tenth more load is: a slip of typing lies there. */
export const askedMore = (before: Dose, now: Dose): AskedMore => ({
  sessionPercent: overAStep(shareOf(now, before)),
  weekPercent: now.sessionsPerWeek > before.sessionsPerWeek ? overAStep(shareOfWeek(now, before)) : null,
});

/** So much more is asked about once more before it is signed: a slip of typing, or a joint overloaded. A choice, no source. */
export const muchMorePercent = 50;

/** The greater of both; null where neither is over a step or known to be. */
export const mostAskedPercent = (before: Dose, now: Dose): number | null => {
  const { sessionPercent, weekPercent } = askedMore(before, now);
  return sessionPercent === null && weekPercent === null
    ? null
    : Math.max(sessionPercent ?? 0, weekPercent ?? 0);
};

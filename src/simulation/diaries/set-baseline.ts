/** The played clinician's habit with usual values. */
import { isBaselineDueForReview, proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { dayFromNumber } from '#core/time/day.ts';
import { dayMilliseconds, firstDay, joint, type Run, recordOf, settlingDays } from './run-state.ts';

/** Set once ready, again on the day it expires or is found stale; kept while the diary offers none. */
export const setBaseline = (run: Run, day: number): void => {
  if (day - firstDay < settlingDays) return;
  const record = recordOf(run);
  const current = run.baselines.at(-1);
  const at = { instant: day * dayMilliseconds + 9 * 3_600_000, day: dayFromNumber(day) };
  const age = current ? day - firstDay - Number(current.setBy.slice(3)) : Number.POSITIVE_INFINITY;
  const isStale = current !== undefined && isBaselineDueForReview(record, joint, at, run.settings.settings);
  if (age < run.settings.settings['baseline-expiry'] && !isStale) return;
  const proposed = proposeBaseline(record, joint, at.day, run.settings.settings);
  if (!proposed.ready) return;
  const { usualPain, widestUsualPainTop, morningSpread } = proposed.proposal;
  run.baselines.push({
    joint,
    usualPain,
    usualPainTop: Math.min(widestUsualPainTop, usualPain + run.settings.widenedBy),
    acceptablePainLimit: 5,
    usualStiffnessMinutes: 10,
    usualSwelling: 'none',
    usualEffusion: 'zero',
    usualFatigue: null,
    setOn: at.day,
    setBy: `day${day - firstDay}`,
    dueForReview: false,
    morningSpread,
  });
};

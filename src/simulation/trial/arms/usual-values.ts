/** The played clinician's habit with usual values: set once the diary offers them, again when they are due. */
import { isBaselineDueForReview, proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import type { EngineSettingValues } from '#core/decision/settings.ts';
import { daysBetween } from '#core/time/day.ts';
import { joint } from '../start.ts';
import { type KeptRecord, recordOf } from './kept-record.ts';

/** What the product marks by itself before it gathers facts. */
export const flagStaleBaseline = (kept: KeptRecord, at: Moment, settings: EngineSettingValues): void => {
  const newest = kept.baselines.at(-1);
  if (!newest || !isBaselineDueForReview(recordOf(kept), joint, at, settings)) return;
  kept.baselines[kept.baselines.length - 1] = { ...newest, dueForReview: true };
};

/** Whether values were set. */
export const setBaselineIfDue = (kept: KeptRecord, at: Moment, settings: EngineSettingValues): boolean => {
  const newest = kept.baselines.at(-1);
  const isDue =
    !newest || newest.dueForReview || daysBetween(newest.setOn, at.day) >= settings['baseline-expiry'];
  if (!isDue) return false;
  const proposed = proposeBaseline(recordOf(kept), joint, at.day, settings);
  if (!proposed.ready) return false;
  const { usualPain, usualPainTop, usualStiffnessMinutes, morningSpread } = proposed.proposal;
  kept.baselines.push({
    joint,
    usualPain,
    usualPainTop,
    acceptablePainLimit: 5,
    usualStiffnessMinutes: usualStiffnessMinutes ?? 0,
    usualSwelling: 'none',
    usualEffusion: 'zero',
    usualFatigue: null,
    setOn: at.day,
    setBy: 'clinician',
    dueForReview: false,
    morningSpread,
  });
  return true;
};

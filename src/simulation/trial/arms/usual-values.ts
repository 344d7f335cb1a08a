/** The played clinician's habit with usual values: set once the diary offers them, again when they are due. */
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import { acceptablePainLimits, proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { renewedBaseline } from '#core/decision/baseline/renew.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import { type EngineSettingValues, engineVersionOf } from '#core/decision/settings.ts';
import { setByClinicianOn } from '#core/record/baseline-age.ts';
import type { Baseline } from '#core/record/record.ts';
import { dayFromNumber, daysBetween } from '#core/time/day.ts';
import { figures } from '../joint-settings.ts';
import { firstDay, joint } from '../start.ts';
import { type KeptRecord, keep } from './kept-record.ts';

const usual = {
  joint,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setBy: 'clinician',
  dueForReview: false,
} as const;

/** Before version 2 nobody moved the acceptable pain limit; since then it is preselected. */
const painLimitFor = (usualPain: number, settings: EngineSettingValues): number =>
  engineVersionOf(settings) < 2
    ? acceptablePainLimits.low
    : (proposePainLimit(usualPain, settings['ceiling-over-usual']) ?? acceptablePainLimits.low);

/** Since version 2 usual pain told at the first visit counts until the diary has shown it. */
export const toldAtFirstVisit = (usualPain: number, settings: EngineSettingValues): readonly Baseline[] =>
  engineVersionOf(settings) < 2
    ? []
    : [
        {
          ...usual,
          usualPain,
          usualPainTop: null,
          acceptablePainLimit: painLimitFor(usualPain, settings),
          usualStiffnessMinutes: figures.usualStiffness,
          setOn: dayFromNumber(firstDay),
          provisional: true,
        },
      ];

const confirmedAfterDays = 14;

/** What the product does by itself before it gathers facts. */
export const renewUsual = (kept: KeptRecord, at: Moment, settings: EngineSettingValues): void => {
  const renewed = renewedBaseline(kept.now, joint, at, settings);
  if (renewed) keep(kept, 'baselines', renewed);
};

/** Whether values were set. */
export const setBaselineIfDue = (kept: KeptRecord, at: Moment, settings: EngineSettingValues): boolean => {
  const newest = kept.now.baselines.at(-1);
  const lasts = newest?.provisional ? confirmedAfterDays : settings['baseline-expiry'];
  const isDue = !newest || newest.dueForReview || daysBetween(setByClinicianOn(newest), at.day) >= lasts;
  if (!isDue) return false;
  const proposed = proposeBaseline(kept.now, joint, at.day, settings);
  if (!proposed.ready) return false;
  const { usualPain, usualPainTop, usualStiffnessMinutes, morningSpread } = proposed.proposal;
  keep(kept, 'baselines', {
    ...usual,
    usualPain,
    usualPainTop,
    acceptablePainLimit: painLimitFor(usualPain, settings),
    usualStiffnessMinutes: usualStiffnessMinutes ?? 0,
    setOn: at.day,
    morningSpread,
  });
  return true;
};

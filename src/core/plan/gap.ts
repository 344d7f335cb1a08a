/**
 * The first session after a break: it is the easier one, or the clinic is rung first, before it and not
 * after. The days are those of rule A2, which asks the same of the dose that follows. No source fixes them;
 * which of the two is asked is the clinic's choice (`gap-first-session`).
 */
import { engineSettingValues } from '../decision/settings.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { type Day, dayMilliseconds, daysBetween } from '../time/day.ts';
import type { PlanReason } from './plan.ts';

export interface GapInputs {
  /** Newest day on which a set was done, of every record of the person; null = never. */
  readonly lastSessionOn: Day | null;
  readonly settings: SettingValues;
  readonly at: { readonly instant: number; readonly day: Day };
}

/** A dose written anew in the break was written with it in mind; a raise that acted by itself was not. */
const daysSinceWritten = (
  version: Pick<PrescriptionVersion, 'signedAt' | 'origin'>,
  instant: number,
): number =>
  version.origin === 'progress'
    ? Number.POSITIVE_INFINITY
    : Math.floor((instant - version.signedAt) / dayMilliseconds);

/** Null where there was no break, or no session to have a break after. */
export const gapReason = (
  { lastSessionOn, settings, at }: GapInputs,
  version: Pick<PrescriptionVersion, 'signedAt' | 'origin'>,
): Extract<PlanReason, { readonly code: `gap-${string}` }> | null => {
  if (lastSessionOn === null) return null;
  const days = Math.min(daysBetween(lastSessionOn, at.day), daysSinceWritten(version, at.instant));
  if (days < engineSettingValues(settings)['gap-days']) return null;
  return settings['gap-first-session'] === 1
    ? { code: 'gap-ring-first', today: 'none', lastOn: lastSessionOn }
    : { code: 'gap-easier', today: 'bad-day', lastOn: lastSessionOn };
};

/**
 * The easier session signed together with a low-load dose: fewer sets, only to the low end of the
 * band, and further from failure. The load stays. No study of bad-day sessions was found; every
 * number is a clinic choice.
 */

import type { Note } from '#core/outcome.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { LowLoadDose } from '../dose.ts';

/** The dose without the exercise and side it is for. */
export type LowLoadWork = Omit<LowLoadDose, 'exerciseId' | 'side'>;

export const badDayDose = (dose: LowLoadWork, settings: SettingValues): LowLoadWork => ({
  ...dose,
  sets: Math.min(dose.sets, settings['bad-day-sets'] ?? dose.sets),
  repetitions: { low: dose.repetitions.low, high: dose.repetitions.low },
  reserve: Math.max(dose.reserve, settings['bad-day-reserve'] ?? dose.reserve),
});

/** Said when the choices leave the bad day as hard as the ordinary one. */
export const badDayWarnings = (dose: LowLoadWork, badDay: LowLoadWork): readonly Note[] => {
  const isEasier =
    badDay.sets < dose.sets ||
    badDay.reserve > dose.reserve ||
    badDay.repetitions.high < dose.repetitions.high;
  if (isEasier) return [];
  const text = 'The bad-day session is no easier than the ordinary one: give fewer sets or more reserve.';
  return [{ code: 'bad-day-not-easier', text }];
};

/** Last day on which the screening carries a step approved ahead; null when it carries none. */
import type { SettingValues } from '../clinic-choice.ts';
import { type Day, dayNumber } from '../day.ts';
import type { Method } from '../methods.ts';
import type { MethodOutcome } from '../model/screening.ts';
import { asksScreeningAgain } from './closings.ts';

interface Screened {
  readonly screening: { readonly day: Day } | null;
  readonly outcomes: readonly MethodOutcome[];
  readonly settings: SettingValues;
}

export const screenedUntil = ({ screening, outcomes, settings }: Screened, method: Method): number | null => {
  const validDays = settings['screening-valid-days'];
  if (!screening || validDays === undefined || asksScreeningAgain(outcomes, method)) return null;
  return dayNumber(screening.day) + validDays;
};

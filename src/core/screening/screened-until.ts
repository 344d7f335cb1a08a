/** Last day on which the screening carries a step approved ahead; null when it carries none. */

import { stopsStepsAhead } from '../episode/care-eligibility.ts';
import type { Method } from '../prescribing/methods.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { type Day, dayNumber } from '../time/day.ts';
import type { MethodOutcome } from './screening.ts';

interface Screened {
  readonly screening: { readonly day: Day } | null;
  readonly outcomes: readonly MethodOutcome[];
  readonly settings: SettingValues;
}

export const screenedUntil = ({ screening, outcomes, settings }: Screened, method: Method): number | null => {
  const validDays = settings['screening-valid-days'];
  if (!screening || validDays === undefined || stopsStepsAhead(outcomes, method)) return null;
  return dayNumber(screening.day) + validDays;
};

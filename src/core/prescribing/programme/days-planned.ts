/** Days a week a dose is prescribed for, held against the days the planned week gives its line. */
import type { Day } from '#core/time/day.ts';
import type { Dose } from '../dose.ts';
import { isWithClinicianAlone } from '../place-of-dose.ts';
import { type Programme, weekdaysOf } from './planned-sessions.ts';

/** How many days the week that holds gives a line, a new one (null) none; null = no week was planned. */
export const daysPlanned = (
  programmes: readonly Programme[],
  day: Day,
  itemId: string | null,
): number | null => weekdaysOf(programmes, day, itemId ?? '')?.length ?? null;

/** The days planned where they are others than prescribed; null = as many, or nothing to hold them against. */
export const daysApart = (dose: Dose, planned: number | null): number | null =>
  planned === null || planned === dose.sessionsPerWeek || isWithClinicianAlone(dose) ? null : planned;

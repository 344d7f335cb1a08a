import { type Day, dayMilliseconds, dayNumber } from '../time/day.ts';

/** Noon of a day: close enough to order items that are only known to the day. */
export const noon = (day: Day): number => dayNumber(day) * dayMilliseconds + dayMilliseconds / 2;

import { type Day, daysBetween } from '../time/day.ts';

/** Noon of a day: close enough to order items that are only known to the day. */
export const noon = (day: Day): number => daysBetween('1970-01-01', day) * 86_400_000 + 43_200_000;

/** Day numbers of civil days, read once each. */
import { type Day, dayNumber as readDay } from '../day.ts';

/** Days repeat across a clinic's histories; reading each text once took a third off the arranging. */
const dayNumbers = new Map<Day, number>();
const mostDays = 100_000;

export const dayNumber = (day: Day): number => {
  let number = dayNumbers.get(day);
  if (number === undefined) {
    number = readDay(day);
    if (dayNumbers.size < mostDays) dayNumbers.set(day, number);
  }
  return number;
};

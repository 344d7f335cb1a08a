/**
 * What imported mornings say of usual pain: a figure for a clinician to look at who sets the usual values. It sets
 * nothing. The days and how many are needed are choices of this project.
 */
import type { Joint } from '../exercises/joints.ts';
import { medianOf } from '../statistics/moments.ts';
import { addDays, type Day } from '../time/day.ts';
import type { ImportedMorning } from './imported.ts';

export interface UsualFromImported {
  readonly joint: Joint;
  readonly medianPain: number;
  readonly mornings: number;
  readonly firstDay: Day;
  readonly lastDay: Day;
}

const daysOfUsual = 14;
const leastMornings = 7;

export interface MorningOnDay {
  readonly day: Day;
  readonly value: ImportedMorning;
}

/** Of two answers for one day the higher one. */
const painByDay = (mornings: readonly MorningOnDay[]): ReadonlyMap<Day, number> => {
  const found = new Map<Day, number>();
  for (const { day, value } of mornings)
    if (value.pain !== null) found.set(day, Math.max(value.pain, found.get(day) ?? 0));
  return found;
};

/** By joint, from the last days that the import has of it; a joint with too few answers is left out. */
export const usualFromImported = (mornings: readonly MorningOnDay[]): readonly UsualFromImported[] => {
  const joints = [...new Set(mornings.map(({ value }) => value.joint))];
  return joints.flatMap((joint) => {
    const answered = painByDay(mornings.filter(({ value }) => value.joint === joint));
    const days = [...answered.keys()].sort();
    const lastDay = days.at(-1);
    if (lastDay === undefined) return [];
    const recent = days.filter((day) => day > addDays(lastDay, -daysOfUsual));
    if (recent.length < leastMornings) return [];
    const medianPain = medianOf(recent.map((day) => answered.get(day)!));
    return [{ joint, medianPain, mornings: recent.length, firstDay: recent[0]!, lastDay }];
  });
};

/**
 * Days on which exercises stand while no week has been planned: as often as prescribed, spaced over the
 * week, all counted from one day so that they come together. A cuff stands on Monday, Wednesday and Friday
 * at most, one exercise with a cuff on a limb a day (common practice: once a session on a limb, two to three
 * sessions a week; no source). What is done only with a clinician beside the patient is left out: that
 * clinician chooses the day. It says nothing of which days suit the patient.
 */
import { isWithClinicianAlone } from '../place-of-dose.ts';
import type { Weekday } from './planned-sessions.ts';
import { laidOut, weekTemplates } from './templates.ts';
import { type PlannedExercise, weekdays } from './week-plan.ts';

const threeDays = weekTemplates.find(({ id }) => id === 'three-days')!;

/** Days after the first: the sessions of a week as far apart as its days allow. Every day from seven on. */
const spacedFrom = (first: Weekday, sessionsPerWeek: number): readonly Weekday[] | null => {
  const sessions = Math.round(sessionsPerWeek);
  if (sessions < 1 || sessions > 6) return null;
  const offsets = Array.from({ length: sessions }, (_, place) => Math.floor((place * 7) / sessions));
  return offsets.map((offset) => weekdays[(first - 1 + offset) % 7]!).sort((a, b) => a - b);
};

/** By prescribed exercise, counted from the weekday of `first`; one that is not named stands on every day. */
export const unplannedDays = (
  exercises: readonly PlannedExercise[],
  first: Weekday,
): ReadonlyMap<string, readonly Weekday[]> => {
  const isCuff = ({ dose }: PlannedExercise) => dose.method === 'occlusion';
  const unattended = exercises.filter(({ dose }) => !isWithClinicianAlone(dose));
  const alone = unattended.filter(isCuff);
  const others = unattended.filter((exercise) => !isCuff(exercise));
  return new Map([
    ...laidOut(threeDays, alone).map(({ itemId, weekdays: days }) => [itemId, days] as const),
    ...others.flatMap(({ itemId, dose }) => {
      const days = spacedFrom(first, dose.sessionsPerWeek);
      return days ? [[itemId, days] as const] : [];
    }),
  ]);
};

/** The week and its conflicts in sentences, for the clinician. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import { type Conflict, cuffDaysPerWeek } from '#core/prescribing/programme/week-plan.ts';

export const weekdayNames = [
  { day: 1, short: 'Mon', title: 'Monday' },
  { day: 2, short: 'Tue', title: 'Tuesday' },
  { day: 3, short: 'Wed', title: 'Wednesday' },
  { day: 4, short: 'Thu', title: 'Thursday' },
  { day: 5, short: 'Fri', title: 'Friday' },
  { day: 6, short: 'Sat', title: 'Saturday' },
  { day: 7, short: 'Sun', title: 'Sunday' },
] as const satisfies readonly { day: Weekday; short: string; title: string }[];

export const dayName = (day: Weekday): string => weekdayNames[day - 1]!.title;

/** Whether the days ticked are those prescribed. */
export const dayCountInWords = (ticked: number, perWeek: number): string =>
  ticked === perWeek ? `${ticked} of ${perWeek} a week` : `${ticked} chosen, ${perWeek} a week prescribed`;

/** "Low load, 3 sets of 20 to 25". */
export const workInWords = (dose: Dose): string => {
  const sets = dose.sets === 1 ? '1 set' : `${dose.sets} sets`;
  if (dose.method === 'occlusion') return `Occlusion, ${sets}: ${dose.scheme.join(', ')}`;
  const { low, high } = dose.repetitions;
  const band = low === high ? `${low}` : `${low} to ${high}`;
  return `${dose.method === 'low-load' ? 'Low load' : 'Variation'}, ${sets} of ${band}`;
};

export const muscleName = (muscle: string): string => muscle.replaceAll('-', ' ');

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

const pairInWords = ([first, second]: readonly [Weekday, Weekday]): string =>
  `worked on ${dayName(first)} and again on ${dayName(second)}`;

/** One line for each muscle, however many of its days stand too close. */
export const conflictsInWords = (
  conflicts: readonly Conflict[],
  titleOf: (itemId: string) => string,
): readonly string[] => {
  const crowded = new Map<string, string[]>();
  const items: (() => string)[] = [];
  for (const conflict of conflicts) {
    if (conflict.kind !== 'muscle-crowded') {
      items.push(() => conflictInWords(conflict, titleOf));
      continue;
    }
    const known = crowded.get(conflict.muscle);
    const pair = pairInWords(conflict.days);
    if (known) known.push(pair);
    else {
      const pairs = [pair];
      crowded.set(conflict.muscle, pairs);
      items.push(() => `${muscleName(conflict.muscle)}: ${pairs.join('; ')}.`);
    }
  }
  return items.map((item) => item());
};

const conflictInWords = (conflict: Conflict, titleOf: (itemId: string) => string): string => {
  switch (conflict.kind) {
    case 'cuff-twice':
      return `${dayName(conflict.day)}: two exercises with a cuff on the ${conflict.limb}. Plan only one; move the other to another day.`;
    case 'cuff-often':
      return `A cuff on the ${conflict.limb} on ${days(conflict.days)} a week. The limit is ${cuffDaysPerWeek.most}; remove a day.`;
    case 'cuff-seldom':
      return `A cuff on the ${conflict.limb} on ${days(conflict.days)} a week; ${cuffDaysPerWeek.least} to ${cuffDaysPerWeek.most} is usual.`;
    case 'days-differ':
      return `${titleOf(conflict.itemId)}: ${dayCountInWords(conflict.planned, conflict.prescribed)}.`;
    case 'muscle-crowded':
      return `${muscleName(conflict.muscle)}: ${pairInWords(conflict.days)}.`;
    case 'session-long':
      return `${dayName(conflict.day)}: about ${conflict.minutes} minutes.`;
  }
};

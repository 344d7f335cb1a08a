/** The week and its conflicts in sentences, for the clinician. */
import { heldSeconds } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import { type Conflict, cuffDaysPerWeek } from '#core/prescribing/programme/week-plan.ts';
import { say } from '#messages/en/staff/programme.ts';

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
  ticked === perWeek
    ? say('days-match', { ticked, prescribed: perWeek })
    : say('days-differ', { ticked, prescribed: perWeek });

/** "Low load, 3 sets of 20 to 25". */
export const workInWords = (dose: Dose): string => {
  const sets = say('sets', { count: dose.sets });
  if (dose.method === 'occlusion') return say('occlusion', { sets, scheme: dose.scheme.join(', ') });
  const { low, high } = dose.repetitions;
  const count = low === high ? `${low}` : say('band', { low, high });
  const seconds = heldSeconds(dose);
  const band = seconds === null ? count : `${count} × ${seconds} s`;
  return dose.method === 'low-load' ? say('low-load', { sets, band }) : say('variation', { sets, band });
};

export const muscleName = (muscle: string): string => muscle.replaceAll('-', ' ');

const pairInWords = ([first, second]: readonly [Weekday, Weekday]): string =>
  say('pair', { first: dayName(first), last: dayName(second) });

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
      return say('cuff.twice', { weekday: dayName(conflict.day), where: conflict.limb });
    case 'cuff-often':
      return say('cuff.often', {
        where: conflict.limb,
        days: say('days', { count: conflict.days }),
        most: cuffDaysPerWeek.most,
      });
    case 'cuff-seldom':
      return say('cuff.seldom', {
        where: conflict.limb,
        days: say('days', { count: conflict.days }),
        least: cuffDaysPerWeek.least,
        most: cuffDaysPerWeek.most,
      });
    case 'days-differ':
      return `${titleOf(conflict.itemId)}: ${dayCountInWords(conflict.planned, conflict.prescribed)}.`;
    case 'muscle-crowded':
      return `${muscleName(conflict.muscle)}: ${pairInWords(conflict.days)}.`;
    case 'session-long':
      return say('session-long', { weekday: dayName(conflict.day), minutes: conflict.minutes });
  }
};

/** The week and its conflicts in sentences, for the clinician. */
import type { Weekday } from '#core/programme/planned-sessions.ts';
import { type Conflict, cuffDaysPerWeek } from '#core/programme/week-plan.ts';

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
  ticked === perWeek ? `${ticked} of ${perWeek} a week` : `${ticked} ticked, ${perWeek} a week prescribed`;

export const muscleName = (muscle: string): string => muscle.replaceAll('-', ' ');

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

export const conflictInWords = (conflict: Conflict, titleOf: (lineId: string) => string): string => {
  switch (conflict.kind) {
    case 'cuff-twice':
      return `${dayName(conflict.day)}: two exercises with a cuff on the ${conflict.limb}. One a session; move the other to another day.`;
    case 'cuff-often':
      return `A cuff on the ${conflict.limb} on ${days(conflict.days)} a week. At most ${cuffDaysPerWeek.most}; take a day off.`;
    case 'cuff-seldom':
      return `A cuff on the ${conflict.limb} on ${days(conflict.days)} a week; ${cuffDaysPerWeek.least} to ${cuffDaysPerWeek.most} is usual.`;
    case 'days-differ':
      return `${titleOf(conflict.lineId)}: ${dayCountInWords(conflict.planned, conflict.prescribed)}.`;
    case 'muscle-crowded':
      return `${muscleName(conflict.muscle)}: worked on ${dayName(conflict.days[0])} and again on ${dayName(conflict.days[1])}.`;
    case 'session-long':
      return `${dayName(conflict.day)}: about ${conflict.minutes} minutes.`;
  }
};

/** Questions a person answers at home: who is asked, and on which day they are due. How often is common practice, no source. */
import type { Field } from '../../calculations/describe.ts';
import type { Refusal } from '../../outcome.ts';
import type { Plan } from '../../plan/plan.ts';
import { openSigns } from '../../plan/plan.ts';
import { addDays, type Day, daysBetween, isDay } from '../../time/day.ts';
import type { Measurement } from '../measurements/measurement.ts';

/** Days between two rounds; common practice, no source. */
export const proposedEveryDays = 28;

/** What is asked in place of a questionnaire’s id: the activities the person chose. */
export const chosenActivities = 'chosen-activities';

export const homeQuestionsFields = [
  { name: 'questions', kind: 'text', minLength: 1, maxLength: 64, about: 'What is asked' },
  { name: 'fromDay', kind: 'day', about: 'From this day on' },
  { name: 'everyDays', kind: 'integer', unit: 'd', min: 7, max: 84, about: 'Every so many days' },
] as const satisfies readonly Field[];

/** A quarter of a year ahead. */
const furthestDays = 92;

export const homeQuestionsConsistent = (
  { fromDay }: { readonly fromDay: string },
  today: Day,
): readonly Refusal[] => {
  const ahead = isDay(fromDay) ? daysBetween(today, fromDay) : -1;
  return ahead >= 0 && ahead <= furthestDays
    ? []
    : [
        {
          field: 'input.fromDay',
          code: 'outside-validity',
          reason: `Enter a day from today to ${furthestDays} days ahead.`,
        },
      ];
};

export interface Rhythm {
  readonly fromDay: Day;
  readonly everyDays: number;
}

/** The first day on which they are due again: the day they begin, then so many days after the last answers. */
export const dueFrom = ({ fromDay, everyDays }: Rhythm, answeredOn: readonly Day[]): Day => {
  const last = answeredOn.toSorted().at(-1);
  if (last === undefined) return fromDay;
  const next = addDays(last, everyDays);
  return next > fromDay ? next : fromDay;
};

export const isDue = (rhythm: Rhythm, answeredOn: readonly Day[], today: Day): boolean =>
  dueFrom(rhythm, answeredOn) <= today;

/**
 * What keeps a person from being asked anything of this kind: a warning sign that is open, everything paused, a
 * stop, or that somebody is to be rung today. What matters then is that.
 */
export const holdsQuestionsBack = (
  plan: Pick<Plan, 'signs' | 'pauses' | 'contact'> & {
    readonly items: readonly Pick<Plan['items'][number], 'decision'>[];
  },
): boolean =>
  openSigns(plan).length > 0 ||
  plan.pauses.some(({ pause, resumedItemIds }) => pause.joint === null && resumedItemIds.size === 0) ||
  plan.contact === 'emergency' ||
  plan.contact === 'same-day' ||
  plan.items.some(({ decision }) => decision === 'pause');

type Rated = Measurement & { readonly answeredAtHome?: boolean };

/** Names of the activities last rated with a clinician, in that order. What was left out at home is still asked. */
export const activitiesAsked = (rows: readonly Rated[]): readonly string[] => {
  const rated = rows.flatMap((row) =>
    row.kind === 'patient-chosen-activity' && !row.answeredAtHome ? [row] : [],
  );
  const newest = rated
    .map(({ day }) => day)
    .toSorted()
    .at(-1);
  return [...new Set(rated.filter(({ day }) => day === newest).map(({ activity }) => activity))];
};

/**
 * When a measure is to be taken again: a first day, and every so many days after it. Which rhythm is right no
 * source fixes; a clinician chooses it for one person and can change or stop it.
 *
 * A measurement up to a week early is the re-test, since a visit seldom falls on its day; common practice, no source.
 */
import type { Field } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';
import { addDays, type Day, daysBetween, isDay } from '../time/day.ts';
import type { Measurement } from './measurements/measurement.ts';
import { measureOf, measures } from './measures/registry.ts';

type Kind = Measurement['kind'];

/** The age of a cuff’s pressure is the clinic’s to set, and falls due by itself. */
export const retestKinds = measures
  .map(({ kind }) => kind)
  .filter((kind) => kind !== 'limb-occlusion-pressure') as unknown as readonly [Kind, ...Kind[]];

const furthestDays = 366;
const earlyDays = 7;

export const retestFields = [
  { name: 'measure', kind: 'enum', values: retestKinds, about: 'Measure' },
  { name: 'dueOn', kind: 'day', about: 'Next due on' },
  {
    name: 'everyDays',
    kind: 'integer',
    unit: 'd',
    min: 14,
    max: 365,
    nullable: true,
    about: 'Then every so many days',
  },
] as const satisfies readonly Field[];

export const retestStopFields = [
  { name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: 'Why it is no longer due' },
] as const satisfies readonly Field[];

export const retestConsistent = ({ dueOn }: { readonly dueOn: string }, today: Day): readonly Refusal[] => {
  const ahead = isDay(dueOn) ? daysBetween(today, dueOn) : -1;
  return ahead >= 0 && ahead <= furthestDays
    ? []
    : [
        {
          field: 'input.dueOn',
          code: 'outside-validity',
          reason: `Enter a day from today to ${furthestDays} days ahead.`,
        },
      ];
};

export interface RetestPlan {
  readonly measure: Kind;
  /** Day it was set: what was measured before is no re-test. */
  readonly setOn: Day;
  /** null = stopped. */
  readonly dueOn: Day | null;
  /** null = once. */
  readonly everyDays: number | null;
  /** Why it was stopped; null while it is not. */
  readonly reason: string | null;
}

export interface RetestDue {
  readonly measure: Kind;
  readonly title: string;
  /** null = nothing is due any more. */
  readonly on: Day | null;
  readonly everyDays: number | null;
  readonly lastOn: Day | null;
}

const nextDue = ({ setOn, dueOn, everyDays }: RetestPlan, measuredOn: readonly Day[]): Day | null => {
  let due = dueOn;
  for (const day of measuredOn.filter((one) => one >= setOn).toSorted()) {
    if (due === null || day < addDays(due, -earlyDays)) continue;
    due = everyDays === null ? null : addDays(day, everyDays);
  }
  return due;
};

export interface RetestStopped {
  readonly measure: Kind;
  readonly title: string;
  readonly on: Day;
  readonly reason: string;
}

const inOrder = (plans: readonly RetestPlan[]): readonly RetestPlan[] =>
  plans.toSorted((a, b) => retestKinds.indexOf(a.measure) - retestKinds.indexOf(b.measure));

/** The measures whose re-test was stopped and not planned anew. In the order of the measures. */
export const retestsStopped = (plans: readonly RetestPlan[]): readonly RetestStopped[] =>
  inOrder(plans).flatMap(({ measure, setOn, dueOn, reason }) =>
    dueOn === null && reason !== null
      ? [{ measure, title: measureOf(measure).title, on: setOn, reason }]
      : [],
  );

/** Each planned measure with the day it is due next; stopped ones are left out. In the order of the measures. */
export const retestsDue = (
  plans: readonly RetestPlan[],
  rows: readonly { readonly kind: Kind; readonly day: Day }[],
): readonly RetestDue[] =>
  inOrder(plans)
    .filter(({ dueOn }) => dueOn !== null)
    .map((plan) => {
      const days = rows.filter(({ kind }) => kind === plan.measure).map(({ day }) => day);
      return {
        measure: plan.measure,
        title: measureOf(plan.measure).title,
        on: nextDue(plan, days),
        everyDays: plan.everyDays,
        lastOn: days.toSorted().at(-1) ?? null,
      };
    });

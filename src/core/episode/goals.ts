/** Goals in the patient's words, and what became of each. What was set is kept; a later step of the same words counts. */

import type { Field } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';
import { type Day, daysBetween, isDay } from '../time/day.ts';

export const goalStates = ['open', 'partly-reached', 'reached', 'set-aside'] as const;
export type GoalState = (typeof goalStates)[number];

export const goalStateWords: Readonly<Record<GoalState, string>> = {
  open: 'working towards it',
  'partly-reached': 'partly reached',
  reached: 'reached',
  'set-aside': 'set aside',
};

export const goalFields = [
  { name: 'goal', kind: 'text', minLength: 1, maxLength: 300, about: 'Goal, in the patient’s words' },
  { name: 'state', kind: 'enum', values: goalStates, about: 'Progress' },
  { name: 'byDay', kind: 'day', nullable: true, about: 'Target date' },
  { name: 'note', kind: 'text', maxLength: 300, nullable: true, about: 'Note' },
] as const satisfies readonly Field[];

/** Three years ahead is further than any goal of rehabilitation is set. */
const furthestDays = 1096;

export const goalConsistent = (
  row: { readonly byDay: string | null; readonly state: GoalState },
  today: Day,
): readonly Refusal[] => {
  if (row.byDay === null) return [];
  if (!isDay(row.byDay))
    return [{ field: 'input.byDay', code: 'wrong-type', reason: 'Give a day that exists.' }];
  const ahead = daysBetween(today, row.byDay);
  if (ahead > furthestDays || (ahead < 0 && row.state === 'open'))
    return [
      {
        field: 'input.byDay',
        code: 'outside-validity',
        reason: 'Give a day from today to three years ahead.',
      },
    ];
  return [];
};

export interface GoalStep {
  readonly goal: string;
  readonly state: GoalState;
  readonly byDay: Day | null;
  readonly note: string | null;
  readonly recordedAt: number;
  readonly byName: string;
}

export interface Goal {
  readonly goal: string;
  readonly state: GoalState;
  readonly byDay: Day | null;
  readonly note: string | null;
  /** When its state was last said, and by whom; null = as set at the start of care. */
  readonly said: { readonly at: number; readonly by: string } | null;
  /** Open, and its day has passed. */
  readonly isOverdue: boolean;
}

const sameWords = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** Goals set at the start of care, then those added; each as its newest step leaves it. Steps stand oldest first. */
export const goalsFrom = (
  setAtStart: readonly string[],
  steps: readonly GoalStep[],
  today: Day,
): readonly Goal[] => {
  const goals = new Map<string, Goal>();
  for (const goal of setAtStart)
    goals.set(sameWords(goal), {
      goal,
      state: 'open',
      byDay: null,
      note: null,
      said: null,
      isOverdue: false,
    });
  for (const { goal, state, byDay, note, recordedAt, byName } of steps) {
    const known = goals.get(sameWords(goal));
    const day = byDay ?? known?.byDay ?? null;
    const isOverdue = state === 'open' && day !== null && daysBetween(day, today) > 0;
    goals.set(sameWords(goal), {
      goal: known?.goal ?? goal,
      state,
      byDay: day,
      note,
      said: { at: recordedAt, by: byName },
      isOverdue,
    });
  }
  return [...goals.values()];
};

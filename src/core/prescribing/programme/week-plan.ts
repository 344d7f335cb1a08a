/**
 * A week looked at as a whole: what stands on which day, how long it takes, the weekly sets of each muscle,
 * and what does not go together. Nothing here prescribes; a plan with a conflict that is only named may be
 * saved, one that breaks the rule for cuffs may not.
 *
 * Cuffs: at most one exercise with a cuff on a limb in a session, and two to three days a week on a limb
 * (common practice, no source).
 */
import type { Muscle } from '#core/exercises/exercise.ts';
import type { Limb, Side } from '#core/exercises/joints.ts';
import type { Dose } from '../dose.ts';
import { fractionalSets } from '../low-load/fractional-sets.ts';
import type { ProgrammeItem, Weekday } from './planned-sessions.ts';
import { type ProgrammeValues, programmeDefaults, sessionMinutes } from './session-length.ts';

export const weekdays: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];

/** A prescribed exercise in force, with what the catalogue knows of it. */
export interface PlannedExercise {
  readonly itemId: string;
  readonly title: string;
  readonly dose: Dose;
  readonly target: readonly Muscle[];
  readonly indirect: readonly Muscle[];
  readonly limb: Limb | 'trunk';
}

export const cuffDaysPerWeek = { least: 2, most: 3 } as const;

export type Conflict =
  | {
      readonly kind: 'days-differ';
      readonly itemId: string;
      readonly planned: number;
      readonly prescribed: number;
    }
  | { readonly kind: 'muscle-crowded'; readonly muscle: Muscle; readonly days: readonly [Weekday, Weekday] }
  | { readonly kind: 'session-long'; readonly day: Weekday; readonly minutes: number }
  | { readonly kind: 'cuff-seldom'; readonly limb: string; readonly days: number }
  | { readonly kind: 'cuff-often'; readonly limb: string; readonly days: number }
  | { readonly kind: 'cuff-twice'; readonly limb: string; readonly day: Weekday };

/** These may not be saved. */
export const refusedConflicts: readonly Conflict['kind'][] = ['cuff-often', 'cuff-twice'];

interface MuscleWeek {
  readonly muscle: Muscle;
  readonly directSets: number;
  readonly indirectSets: number;
  /** Indirect sets at half. */
  readonly weeklySets: number;
  readonly days: readonly Weekday[];
}

interface DayPlan {
  readonly day: Weekday;
  readonly itemIds: readonly string[];
  readonly minutes: number;
}

export interface WeekPlan {
  readonly days: readonly DayPlan[];
  readonly muscles: readonly MuscleWeek[];
  readonly conflicts: readonly Conflict[];
}

type DaysOf = (exercise: PlannedExercise) => readonly Weekday[];

const daysFrom = (items: readonly ProgrammeItem[]): DaysOf => {
  const byItem = new Map(items.map((item) => [item.itemId, item.weekdays]));
  return ({ itemId }) => byItem.get(itemId) ?? [];
};

const musclesOf = (exercises: readonly PlannedExercise[], daysOf: DaysOf): readonly MuscleWeek[] => {
  const sums = new Map<Muscle, { direct: number; indirect: number; days: Set<Weekday> }>();
  const sumOf = (muscle: Muscle) => {
    const known = sums.get(muscle) ?? { direct: 0, indirect: 0, days: new Set<Weekday>() };
    sums.set(muscle, known);
    return known;
  };
  for (const exercise of exercises) {
    const days = daysOf(exercise);
    const sets = exercise.dose.sets * days.length;
    for (const muscle of exercise.target) {
      sumOf(muscle).direct += sets;
      for (const day of days) sumOf(muscle).days.add(day);
    }
    for (const muscle of exercise.indirect) sumOf(muscle).indirect += sets;
  }
  return [...sums]
    .map(([muscle, { direct, indirect, days }]): MuscleWeek => {
      const counted = fractionalSets({ directSets: direct, indirectSets: indirect });
      return {
        muscle,
        directSets: direct,
        indirectSets: indirect,
        weeklySets: counted.ok ? counted.result.weeklySets : 0,
        days: [...days].sort((a, b) => a - b),
      };
    })
    .filter(({ weeklySets }) => weeklySets > 0)
    .sort((a, b) => b.weeklySets - a.weeklySets || (a.muscle < b.muscle ? -1 : 1));
};

/** Days from one weekday to the next; the week goes round. */
const gap = (from: Weekday, to: Weekday): number => (to - from + 7) % 7 || 7;

const crowded = (muscles: readonly MuscleWeek[], restDays: number): readonly Conflict[] =>
  muscles.flatMap(({ muscle, days }) =>
    days.length < 2
      ? []
      : days.flatMap((day, place): readonly Conflict[] => {
          const next = days[(place + 1) % days.length]!;
          return gap(day, next) < restDays ? [{ kind: 'muscle-crowded', muscle, days: [day, next] }] : [];
        }),
  );

const limbOf = ({ dose }: PlannedExercise): string | null =>
  dose.method === 'occlusion' ? `${dose.side satisfies Side} ${dose.limb}` : null;

const cuffConflicts = (exercises: readonly PlannedExercise[], daysOf: DaysOf): readonly Conflict[] => {
  const limbs = [...new Set(exercises.flatMap((one) => limbOf(one) ?? []))];
  return limbs.flatMap((limb): readonly Conflict[] => {
    const mine = exercises.filter((one) => limbOf(one) === limb);
    const twice = weekdays.filter((day) => mine.filter((one) => daysOf(one).includes(day)).length > 1);
    const days = weekdays.filter((day) => mine.some((one) => daysOf(one).includes(day))).length;
    return [
      ...twice.map((day): Conflict => ({ kind: 'cuff-twice', limb, day })),
      ...(days > cuffDaysPerWeek.most ? [{ kind: 'cuff-often', limb, days } as const] : []),
      ...(days > 0 && days < cuffDaysPerWeek.least ? [{ kind: 'cuff-seldom', limb, days } as const] : []),
    ];
  });
};

const daysDiffer = (exercises: readonly PlannedExercise[], daysOf: DaysOf): readonly Conflict[] =>
  exercises.flatMap((exercise) => {
    const planned = daysOf(exercise).length;
    const prescribed = exercise.dose.sessionsPerWeek;
    return planned === prescribed
      ? []
      : [
          {
            kind: 'days-differ',
            itemId: exercise.itemId,
            planned,
            prescribed,
          } as const,
        ];
  });

export const weekPlan = (
  exercises: readonly PlannedExercise[],
  items: readonly ProgrammeItem[],
  values: ProgrammeValues = programmeDefaults,
): WeekPlan => {
  const daysOf = daysFrom(items);
  const days = weekdays.map((day): DayPlan => {
    const mine = exercises.filter((one) => daysOf(one).includes(day));
    const minutes = sessionMinutes(
      mine.map((one) => one.dose),
      values,
    );
    return { day, itemIds: mine.map((one) => one.itemId), minutes };
  });
  const muscles = musclesOf(exercises, daysOf);
  const long = days.filter(({ minutes }) => minutes > values['longest-session-minutes']);
  return {
    days,
    muscles,
    conflicts: [
      ...cuffConflicts(exercises, daysOf),
      ...daysDiffer(exercises, daysOf),
      ...crowded(muscles, values['same-muscle-rest-days']),
      ...long.map(({ day, minutes }): Conflict => ({ kind: 'session-long', day, minutes })),
    ],
  };
};

/** What keeps a plan from being saved. */
export const refusedIn = (plan: WeekPlan): readonly Conflict[] =>
  plan.conflicts.filter(({ kind }) => refusedConflicts.includes(kind));

/**
 * Weeks to begin from, our own. A template lays the prescribed exercises over the week by their frequency;
 * the clinician moves what does not fit. Exercises with a cuff on one limb go to different days.
 */
import type { ProgrammeItem, Weekday } from './planned-sessions.ts';
import { type PlannedExercise, weekdays } from './week-plan.ts';

export interface WeekTemplate {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  /** Days an exercise may stand on, in order of preference. */
  readonly daysFor: (exercise: PlannedExercise, place: number) => readonly Weekday[];
}

const threeApart: readonly Weekday[] = [1, 3, 5];
const twoApart: readonly Weekday[] = [1, 4];

export const weekTemplates: readonly WeekTemplate[] = [
  {
    id: 'three-days',
    title: 'Three days, everything',
    about: 'Monday, Wednesday, Friday; each exercise as often as prescribed.',
    daysFor: () => threeApart,
  },
  {
    id: 'two-days',
    title: 'Two days, everything',
    about: 'Monday and Thursday. Exercises prescribed more often are named as differing.',
    daysFor: () => twoApart,
  },
  {
    id: 'arms-and-legs-apart',
    title: 'Arms and legs on different days',
    about: 'Arms and trunk on Monday, Thursday and Saturday; legs on Tuesday, Friday and Sunday.',
    daysFor: ({ limb }) => (limb === 'leg' ? [2, 5, 7] : [1, 4, 6]),
  },
  {
    id: 'short-days',
    title: 'Short days',
    about: 'The exercises in turn on Monday, Wednesday, Friday or on Tuesday, Thursday, Saturday.',
    daysFor: (_, place) => (place % 2 === 0 ? [1, 3, 5] : [2, 4, 6]),
  },
];

const cuffLimb = ({ dose }: PlannedExercise): string | null =>
  dose.method === 'occlusion' ? `${dose.side} ${dose.limb}` : null;

/** The exercises over the week; a day on which the limb has its cuff already is passed over. */
export const laidOut = (
  template: WeekTemplate,
  exercises: readonly PlannedExercise[],
): readonly ProgrammeItem[] => {
  const taken = new Map<string, Set<Weekday>>();
  return exercises.map((exercise, place) => {
    const limb = cuffLimb(exercise);
    const used = limb === null ? new Set<Weekday>() : (taken.get(limb) ?? new Set<Weekday>());
    // With its own days taken by another cuff exercise of the limb, any free day is as good.
    const requested = template.daysFor(exercise, place);
    const free = [...requested, ...(limb === null ? [] : weekdays)].filter((day) => !used.has(day));
    const room = limb === null ? 7 : Math.max(0, 3 - used.size);
    const days = [...new Set(free)].slice(0, Math.min(exercise.dose.sessionsPerWeek, room));
    if (limb !== null) taken.set(limb, new Set([...used, ...days]));
    return { itemId: exercise.itemId, weekdays: days.sort((a, b) => a - b) };
  });
};

/** What the picture of the last weeks shows: one line of work and the mornings under it. Pure; nothing is judged. */
import type { HistoryDay, HistoryView } from '#api/patient/history-view.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { daysBetween } from '#core/time/day.ts';
import type { Text } from '#messages/text.ts';

export interface Point {
  readonly day: string;
  readonly value: number;
}

export interface OwnCourse {
  readonly since: string;
  readonly sessions: number;
  /** The exercise with a weight done most often, or without one the exercise done most often, by its repetitions. */
  readonly work: {
    readonly title: Text;
    readonly of: 'load' | 'repetitions';
    readonly points: readonly Point[];
  } | null;
  /** Two at most can be told apart in the picture: those that hurt most. */
  readonly mornings: readonly { readonly joint: Joint; readonly points: readonly Point[] }[];
}

type Exercise = HistoryDay['sessions'][number]['exercises'][number];

const highestLoad = ({ sets }: Exercise): number | null => {
  const loads = sets.flatMap((set) => (set.loadKg === null ? [] : [set.loadKg]));
  return loads.length > 0 ? Math.max(...loads) : null;
};

/** A count that was lost leaves the sum unknown, never smaller. */
const allRepetitions = ({ sets }: Exercise): number | null =>
  sets.reduce<number | null>(
    (sum, set) => (sum === null || set.repetitions === null ? null : sum + set.repetitions),
    0,
  );

const done = (days: readonly HistoryDay[]) =>
  days.flatMap(({ day, sessions }) =>
    sessions.flatMap((session) =>
      // The lighter day is done for the joint's sake and says nothing of the way the work went.
      session.kind === 'full' ? session.exercises.map((exercise) => ({ day, exercise })) : [],
    ),
  );

const workOf = (days: readonly HistoryDay[]): OwnCourse['work'] => {
  // Holds start again when each gets longer: a line of their number would fall while the work grows.
  const all = done(days).filter(({ exercise }) => !exercise.isHeld);
  const counts = new Map<string, number>();
  for (const { exercise } of all) counts.set(exercise.exerciseId, (counts.get(exercise.exerciseId) ?? 0) + 1);
  const loaded = new Set(
    all.flatMap(({ exercise }) => ((highestLoad(exercise) ?? 0) > 0 ? [exercise.exerciseId] : [])),
  );
  const exerciseId = [...counts].sort(
    (a, b) => Number(loaded.has(b[0])) - Number(loaded.has(a[0])) || b[1] - a[1],
  )[0]?.[0];
  if (exerciseId === undefined) return null;
  const mine = all.filter(({ exercise }) => exercise.exerciseId === exerciseId);
  const isLoaded = loaded.has(exerciseId);
  const read = isLoaded ? highestLoad : allRepetitions;
  const points = mine.flatMap(({ day, exercise }) => {
    const value = read(exercise);
    return value === null ? [] : [{ day, value }];
  });
  const title = mine[0]?.exercise.title;
  return title && points.length > 0 ? { title, of: isLoaded ? 'load' : 'repetitions', points } : null;
};

const morningsOf = (days: readonly HistoryDay[]): OwnCourse['mornings'] => {
  const byJoint = new Map<Joint, Point[]>();
  for (const { day, mornings } of days) {
    for (const { joint, pain } of mornings.flatMap((morning) => morning.joints)) {
      if (pain !== null) byJoint.set(joint, [...(byJoint.get(joint) ?? []), { day, value: pain }]);
    }
  }
  const highest = (points: readonly Point[]): number => Math.max(...points.map(({ value }) => value));
  return [...byJoint]
    .map(([joint, points]) => ({ joint, points }))
    .toSorted((one, other) => highest(other.points) - highest(one.points))
    .slice(0, 2);
};

/** Six weeks, counted back from the newest day on the page. */
const daysDrawn = 42;

export const ownCourse = (view: HistoryView): OwnCourse | null => {
  const newest = view.days[0]?.day;
  const days = view.days.filter(({ day }) => newest && daysBetween(day, newest) <= daysDrawn).reverse();
  const first = days[0];
  if (!first) return null;
  return {
    since: first.day,
    sessions: days.reduce((sum, day) => sum + day.sessions.length, 0),
    work: workOf(days),
    mornings: morningsOf(days),
  };
};

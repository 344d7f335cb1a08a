/** Answers of this morning that the clinic's page does not count yet: its plan is older than they are. Pure. */
import type { Today } from '#core/decision/answers.ts';
import { type LeftOfJoint, leftOfExercise, mostCautiousToday } from '#core/decision/left-of-today.ts';
import type { Saved } from './outbox/outbox.ts';
import type { DayView } from './view-on-day.ts';

type Counted = Pick<DayView, 'day' | 'morning'>;

const isAhead = ({ day, morning }: Counted, saved: Saved): boolean => {
  if (!saved.leaves || saved.kind !== 'morning' || saved.day !== day) return false;
  const counted = morning.entryId ?? null;
  // Once it was sent, another answer may stand in its place; a page that counts none is older than it.
  return saved.status === 'waiting'
    ? counted !== saved.entryId
    : saved.status === 'stored' && counted === null;
};

const leavesOf = (view: Counted, entries: readonly Saved[]): readonly LeftOfJoint[] =>
  entries.filter((saved) => isAhead(view, saved)).flatMap(({ leaves = [] }) => leaves);

/** The least that they leave of any joint; null = they take nothing away, or are counted. */
export const leftUntilCounted = (view: Counted, entries: readonly Saved[]): Today | null => {
  const leaves = leavesOf(view, entries);
  return leaves.length === 0 ? null : mostCautiousToday(leaves.map(({ today }) => today));
};

export const viewUntilCounted = (view: DayView, entries: readonly Saved[]): DayView => {
  const leaves = leavesOf(view, entries);
  if (leaves.length === 0) return view;
  const exercises = view.exercises.map((exercise) => ({
    ...exercise,
    today: mostCautiousToday([exercise.today, leftOfExercise(leaves, exercise.joints)]),
  }));
  return { ...view, exercises };
};

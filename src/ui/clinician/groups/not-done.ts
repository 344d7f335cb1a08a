/** What of a session was not done or not said, in words: it goes out as open, and the page names it. */
import type { SessionEntry } from '#core/record/entries.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { doseTitle } from '../dose-words.ts';
import type { ExerciseNow } from './group-answers.ts';

const counted = ['open', 'done', 'skipped', 'not-planned', 'cuff'] as const;

/** Sets of what stood on today's programme; a rest by the plan is nothing left out. */
const setsLeft = (exercises: readonly ExerciseNow[]): readonly string[] =>
  exercises
    .filter(({ state }) => counted.some((one) => one === state) && state !== 'not-planned')
    .filter(({ sets, dose }) => sets.length < dose.sets)
    .map(({ sets, dose }) =>
      say('not-done.sets', { sets: sets.length, of: dose.sets, exercise: doseTitle(dose) }),
    );

const openOfJoints = (entry: SessionEntry, didWork: boolean): readonly string[] =>
  entry.joints.flatMap(({ joint: id, painBefore, painDuring, painAfter, gaveWay }) => {
    const where = jointInWords(id);
    return [
      ...(painBefore === null ? [say('not-done.pain-before', { where })] : []),
      ...(didWork && painDuring === null ? [say('not-done.pain-during', { where })] : []),
      ...(didWork && painAfter === null ? [say('not-done.pain-after', { where })] : []),
      ...(didWork && gaveWay === null ? [say('not-done.gave-way', { where })] : []),
    ];
  });

interface Asking {
  /** The clinic asks for pain two hours later; what is entered on this page is not asked about. */
  readonly asksTwoHours: boolean;
}

export const notDone = (
  entry: SessionEntry,
  exercises: readonly ExerciseNow[],
  { asksTwoHours }: Asking,
): readonly string[] => {
  const didWork = entry.sets.length > 0;
  return [
    ...setsLeft(exercises),
    ...openOfJoints(entry, didWork),
    ...(entry.otherJointWorse == null ? [say('not-done.other-joint')] : []),
    ...(entry.extraPainRelief === null ? [say('not-done.relief')] : []),
    ...(entry.news == null ? [say('not-done.news')] : []),
    ...(didWork && entry.didExtra === null ? [say('not-done.extra')] : []),
    ...(didWork ? [say('not-done.burn')] : []),
    ...(didWork && asksTwoHours ? [say('not-done.two-hours')] : []),
  ];
};

/** The entry a session of a group hour becomes. What was not answered goes out as null. */
import { shortWording } from '#core/danger/signs-asked.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { entryFormat, type SessionEntry } from '#core/record/entries.ts';
import type { News } from '#core/record/entry-words.ts';
import { type StopReason, stopReasons } from '#core/record/record.ts';
import type { GroupPerson } from '../answers.ts';
import {
  answerIn,
  type ExerciseNow,
  exercisesNow,
  gaveWayName,
  isShort,
  loadKgOf,
  painName,
  type SetDone,
  scoreIn,
  stopName,
  type Typed,
  ticksIn,
} from './group-answers.ts';

const reasonOf = (said: string | undefined, isAsked: boolean): StopReason =>
  stopReasons.find((reason) => reason === said) ?? (isAsked ? 'unknown' : 'none');

/** A set that stands as it was saved keeps its reason: the dose of today does not make it short. */
const stopReasonOf = ({ exercise, dose, was }: ExerciseNow, done: SetDone, typed: Typed): StopReason => {
  const said = typed[stopName(exercise.itemId, done.set)];
  const saved = was.find(({ set }) => set === done.set);
  if (said === undefined && saved?.stopReason === 'none' && saved.repetitions === done.repetitions)
    return 'none';
  return reasonOf(said, done.repetitions === null || isShort(dose, done));
};

/** In a correction a set stays one of the prescription it was done under, whatever is prescribed by now. */
const setsOf = (now: ExerciseNow, typed: Typed): SessionEntry['sets'] =>
  now.sets.map((done) => {
    const { exercise, isEasier, was } = now;
    const saved = was.find(({ set }) => set === done.set) ?? was[0];
    return {
      prescriptionId: saved?.prescriptionId ?? exercise.prescriptionId,
      itemId: exercise.itemId,
      set: done.set,
      repetitions: done.repetitions,
      loadKg: loadKgOf(now, done.set, typed),
      reserve: done.effort,
      stopReason: stopReasonOf(now, done, typed),
      ...(saved && saved.easier === undefined ? {} : { easier: saved?.easier ?? isEasier }),
    };
  });

/** An empty list says "asked, and none": before the work, and after it where there was any. */
const redFlagsOf = (typed: Typed, didWork: boolean): SessionEntry['redFlags'] => {
  const [before, now, after] = [
    ticksIn<RedFlag>(typed.signs),
    ticksIn<RedFlag>(typed['signs-now']),
    ticksIn<RedFlag>(typed['signs-after']),
  ];
  const told: readonly RedFlag[] = [...new Set([...(before ?? []), ...(now ?? []), ...(after ?? [])])];
  return told.length > 0 || (before !== null && (after !== null || !didWork)) ? [...told] : null;
};

const signsAskedOf = (typed: Typed): NonNullable<SessionEntry['signsAsked']> => {
  const asked = (moment: 'before' | 'now' | 'during', name: string) => {
    if (typed[name] === undefined) return [];
    const form = typed[`${name}-form`] === 'short' ? (moment === 'during' ? 'statement' : 'short') : 'list';
    return [{ moment, form, wording: form === 'list' ? null : shortWording } as const];
  };
  return [...asked('before', 'signs'), ...asked('now', 'signs-now'), ...asked('during', 'signs-after')];
};

interface Sending {
  readonly now: number;
}

export const entryOf = (
  { entryId, today }: Pick<GroupPerson, 'entryId' | 'today'>,
  typed: Typed,
  { now }: Sending,
): SessionEntry => {
  const exercises = exercisesNow(today, typed);
  const sets = exercises.flatMap((one) => setsOf(one, typed));
  const flags = redFlagsOf(typed, sets.length > 0);
  const beganAt = Number(typed.began ?? now);
  const done = exercises.filter((one) => one.sets.length > 0);
  return {
    format: entryFormat,
    entryId: typed['entry-id'] ?? entryId,
    ...(typed.amends === undefined ? {} : { amends: typed.amends }),
    // A correction is of the day of the work, whenever it is made.
    day: typed.day ?? today.day,
    zone: typed.zone ?? today.zone,
    sentAt: now,
    redFlags: flags,
    signsAsked: signsAskedOf(typed),
    extraPainRelief: answerIn(typed.relief),
    kind: done.length > 0 && done.every(({ isEasier }) => isEasier) ? 'bad-day' : 'full',
    beganAt,
    endedAt: Math.max(beganAt, Number(typed.ended ?? now)),
    didExtra: answerIn(typed.extra),
    news: ticksIn<News>(typed.news)?.slice() ?? null,
    otherJointWorse: answerIn(typed['other-joint']),
    stoppedByFlag: (flags ?? []).length > 0,
    limbChecks: [],
    sets,
    joints: today.joints.map((joint) => ({
      joint,
      painBefore: scoreIn(typed[painName('before', joint)]),
      painDuring: scoreIn(typed[painName('during', joint)]),
      painAfter: scoreIn(typed[painName('after', joint)]),
      twoHoursState: 'not-applicable',
      muscleBurn: null,
      cuffDiscomfort: null,
      gaveWay: answerIn(typed[gaveWayName(joint)]),
    })),
  };
};

/** The entry a session of a group hour becomes, and back again for a correction. What was not answered goes out as null. */
import { shortWording } from '#core/danger/signs-asked.ts';
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { entryFormat, type SessionEntry } from '#core/record/entries.ts';
import type { News } from '#core/record/entry-words.ts';
import { type StopReason, stopReasons } from '#core/record/record.ts';
import type { GroupPerson } from '../answers.ts';
import {
  answerIn,
  asName,
  type ExerciseNow,
  effortName,
  exercisesNow,
  flagsIn,
  flagsText,
  gaveWayName,
  isShort,
  loadName,
  notSaid,
  painName,
  scoreIn,
  setName,
  stopName,
  type TodayOfPerson,
  type Typed,
} from './group-answers.ts';

const reasonOf = (said: string | undefined, isAsked: boolean): StopReason =>
  stopReasons.find((reason) => reason === said) ?? (isAsked ? 'unknown' : 'none');

const setsOf = ({ exercise, dose, isEasier, sets }: ExerciseNow, typed: Typed): SessionEntry['sets'] =>
  sets.map((done) => ({
    prescriptionId: exercise.prescriptionId,
    itemId: exercise.itemId,
    set: done.set,
    repetitions: done.repetitions,
    loadKg: scoreIn(typed[loadName(exercise.itemId)]) ?? prescribedLoadKg(dose),
    reserve: done.effort,
    stopReason: reasonOf(
      typed[stopName(exercise.itemId, done.set)],
      done.repetitions === null || isShort(dose, done),
    ),
    easier: isEasier,
  }));

const newsIn = (text: string | undefined): readonly News[] | null =>
  text === undefined || text === notSaid ? null : text === 'none' ? [] : (text.split('~') as News[]);

/** An empty list says "asked, and none": before the work, and after it where there was any. */
const redFlagsOf = (typed: Typed, didWork: boolean): SessionEntry['redFlags'] => {
  const [before, now, after] = [
    flagsIn(typed.signs),
    flagsIn(typed['signs-now']),
    flagsIn(typed['signs-after']),
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
    day: today.day,
    zone: today.zone,
    sentAt: now,
    redFlags: flags,
    signsAsked: signsAskedOf(typed),
    extraPainRelief: answerIn(typed.relief),
    kind: done.length > 0 && done.every(({ isEasier }) => isEasier) ? 'bad-day' : 'full',
    beganAt,
    endedAt: Math.max(beganAt, Number(typed.ended ?? now)),
    didExtra: answerIn(typed.extra),
    news: newsIn(typed.news)?.slice() ?? null,
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

const scoreText = (score: number | null): string => (score === null ? notSaid : String(score));
const answerText = (answer: boolean | null | undefined): string =>
  answer == null ? notSaid : answer ? 'yes' : 'no';

const setTexts = (sets: SessionEntry['sets']): Typed =>
  Object.fromEntries(
    sets.flatMap(({ itemId, set, repetitions, reserve, stopReason, loadKg, easier }) => [
      [setName(itemId, set), scoreText(repetitions)],
      [effortName(itemId, set), scoreText(reserve)],
      ...(stopReason === 'none' ? [] : [[stopName(itemId, set), stopReason]]),
      [asName(itemId), easier ? 'easier' : 'planned'],
      ...(loadKg === null ? [] : [[loadName(itemId), String(loadKg)]]),
    ]),
  );

const signNames = { before: 'signs', now: 'signs-now', during: 'signs-after' } as const;

/** Where they were not all asked, they are asked anew; in which form they were asked stays. */
const signTexts = ({ redFlags, signsAsked = [] }: SessionEntry): Typed =>
  redFlags === null
    ? {}
    : Object.fromEntries(
        signsAsked.flatMap(({ moment, form }) => {
          const name = moment === 'morning' ? null : signNames[moment];
          if (name === null) return [];
          return [[name, flagsText(redFlags)], ...(form === 'list' ? [] : [[`${name}-form`, 'short']])];
        }),
      );

/** A session that counts, as it would have been pressed: put right, it is sent in its own place. */
export const typedFrom = (
  { joints }: Pick<TodayOfPerson, 'joints'>,
  entry: SessionEntry,
  entryId: string,
): Typed => {
  const isUsual =
    entry.news?.length === 0 && entry.extraPainRelief === false && entry.otherJointWorse === false;
  const isRight = entry.didExtra === false && entry.joints.every(({ gaveWay }) => gaveWay === false);
  return {
    'entry-id': entryId,
    amends: entry.entryId,
    ...signTexts(entry),
    began: String(entry.beganAt),
    ended: String(entry.endedAt),
    finished: 'yes',
    usual: isUsual ? 'yes' : 'no',
    relief: answerText(entry.extraPainRelief),
    news: entry.news === null || entry.news === undefined ? notSaid : flagsText(entry.news),
    'other-joint': answerText(entry.otherJointWorse),
    right: isRight ? 'yes' : 'no',
    extra: answerText(entry.didExtra),
    ...setTexts(entry.sets),
    ...Object.fromEntries(
      joints.flatMap((joint) => {
        const told = entry.joints.find((one) => one.joint === joint);
        return [
          [painName('before', joint), scoreText(told?.painBefore ?? null)],
          [painName('during', joint), scoreText(told?.painDuring ?? null)],
          [painName('after', joint), scoreText(told?.painAfter ?? null)],
          [gaveWayName(joint), answerText(told?.gaveWay)],
        ];
      }),
    ),
  };
};

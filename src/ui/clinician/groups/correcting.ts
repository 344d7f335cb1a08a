/** A saved session put right: as it would have been pressed, and with the doses it was done under. */
import type { SessionEntry } from '#core/record/entries.ts';
import type { GroupPerson } from '../answers.ts';
import { listText } from '../forms/sent/sent-form.ts';
import {
  asName,
  effortName,
  gaveWayName,
  notSaid,
  painName,
  setName,
  stopName,
  type TodayOfPerson,
  type Typed,
  wasName,
} from './group-answers.ts';

type Exercise = TodayOfPerson['exercises'][number];

/** What was done stays work of the prescription it was done under, though another one, or none, stands by now. */
const exercisesOf = ({ today, session }: GroupPerson): readonly Exercise[] => {
  const done = session?.exercises ?? [];
  const standing = today.exercises.map((exercise) => {
    const before = done.find(({ itemId }) => itemId === exercise.itemId);
    if (!before) return exercise;
    const { prescriptionId, dose, badDay } = before;
    return prescriptionId === exercise.prescriptionId
      ? exercise
      : { ...exercise, prescriptionId, dose, badDay };
  });
  const ended = done.filter(({ itemId }) => today.exercises.every((one) => one.itemId !== itemId));
  return [
    ...standing,
    ...ended.map((exercise) => ({
      ...exercise,
      today: 'as-planned' as const,
      isDoable: false,
      isPlanned: false,
      reasons: [],
    })),
  ];
};

/** The person as the page asks about them: in a correction with the doses and joints of the session that was saved. */
export const personNow = <P extends GroupPerson>(person: P, typed: Typed): P => {
  const { session, today } = person;
  if (typed.amends === undefined || !session) return person;
  const joints = session.entry.joints.map(({ joint }) => joint);
  return { ...person, today: { ...today, joints, exercises: exercisesOf(person) } };
};

const scoreText = (score: number | null): string => (score === null ? notSaid : String(score));
const answerText = (answer: boolean | null | undefined): string =>
  answer == null ? notSaid : answer ? 'yes' : 'no';

const setTexts = (sets: SessionEntry['sets']): Typed =>
  Object.fromEntries(
    sets.flatMap(({ itemId, ...saved }) => [
      [setName(itemId, saved.set), scoreText(saved.repetitions)],
      [effortName(itemId, saved.set), scoreText(saved.reserve)],
      ...(saved.stopReason === 'none' ? [] : [[stopName(itemId, saved.set), saved.stopReason]]),
      [asName(itemId), saved.easier ? 'easier' : 'planned'],
      [wasName(itemId, saved.set), JSON.stringify(saved)],
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
          return [[name, listText(redFlags)], ...(form === 'list' ? [] : [[`${name}-form`, 'short']])];
        }),
      );

/** A session that counts, as it would have been pressed: put right, it is sent in its own place. */
export const typedFrom = (entry: SessionEntry, entryId: string): Typed => {
  const isUsual =
    entry.news?.length === 0 && entry.extraPainRelief === false && entry.otherJointWorse === false;
  const isRight = entry.didExtra === false && entry.joints.every(({ gaveWay }) => gaveWay === false);
  return {
    'entry-id': entryId,
    amends: entry.entryId,
    day: entry.day,
    zone: entry.zone,
    ...signTexts(entry),
    began: String(entry.beganAt),
    ended: String(entry.endedAt),
    finished: 'yes',
    usual: isUsual ? 'yes' : 'no',
    relief: answerText(entry.extraPainRelief),
    news: entry.news === null || entry.news === undefined ? notSaid : listText(entry.news),
    'other-joint': answerText(entry.otherJointWorse),
    right: isRight ? 'yes' : 'no',
    extra: answerText(entry.didExtra),
    ...setTexts(entry.sets),
    ...Object.fromEntries(
      entry.joints.flatMap(({ joint, painBefore, painDuring, painAfter, gaveWay }) => [
        [painName('before', joint), scoreText(painBefore)],
        [painName('during', joint), scoreText(painDuring)],
        [painName('after', joint), scoreText(painAfter)],
        [gaveWayName(joint), answerText(gaveWay)],
      ]),
    ),
  };
};

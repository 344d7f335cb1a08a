/**
 * What a joint answered on each day: during and around sessions, and on the mornings. An answer that
 * was due and is not there is said to be missing; it is never drawn as no pain.
 */
import type { Joint } from '../exercises/joints.ts';
import type { OtherJoint } from '../record/entry-words.ts';
import {
  type AnswerName,
  type JointMorningAnswers,
  morningQuestions,
  type SwellingQuestion,
} from '../record/morning-questions.ts';
import type { MorningRecord, SessionRecord } from '../record/record.ts';
import { addDays, type Day } from '../time/day.ts';

export type Answered = number | 'missing' | 'not-asked';

export interface SessionPain {
  readonly sessionId: string;
  readonly before: Answered;
  readonly during: Answered;
  readonly after: Answered;
  readonly twoHours: Answered;
  /** The phone's clock was doubtful: everything counts as missing until confirmed. */
  readonly clockDoubtful: boolean;
  readonly amended: boolean;
}

type Read<V> = Exclude<V, null | 'not-applicable' | undefined> | 'missing' | 'not-asked';

/** Each answer of the morning check, said to be missing or not asked where it is so. */
export type MorningAnswers = { readonly [N in AnswerName]: Read<JointMorningAnswers[N]> } & {
  /** What the swelling answers; answers to one question are never read beside answers to the other. */
  readonly swellingQuestion: SwellingQuestion;
  readonly clockDoubtful: boolean;
  readonly amended: boolean;
  /** Pain in other answers of the same morning, as from a second phone, in the order in which they came. */
  readonly alsoPain?: readonly Answered[];
  /** All but the pain was answered by one press, "as yesterday". */
  readonly isAsYesterday?: boolean;
  /** Of the whole person, where it was asked. */
  readonly fatigue?: Answered;
  readonly otherJoint?: OtherJoint;
};

const answered = <V>(given: V, isDoubtful: boolean): Read<V> =>
  given === 'not-applicable' || given === undefined
    ? 'not-asked'
    : given === null || isDoubtful
      ? 'missing'
      : (given as Read<V>);

/** Pain of one joint in one session; null when the session did not ask about the joint. */
export const sessionPain = (session: SessionRecord, joint: Joint): SessionPain | null => {
  const row = session.joints.find((one) => one.joint === joint);
  if (!row) return null;
  const doubtful = session.clockDoubtful;
  return {
    sessionId: session.id,
    before: answered(row.painBefore, doubtful),
    during: answered(row.painDuring, doubtful),
    after: answered(row.painAfter, doubtful),
    twoHours: answered(row.painTwoHours, doubtful),
    clockDoubtful: doubtful,
    amended: session.amended === true,
  };
};

const painsOf = (pain: SessionPain): readonly Answered[] => [
  pain.before,
  pain.during,
  pain.after,
  pain.twoHours,
];

/** The highest score that was given; null when none was. */
export const highestPain = (pain: SessionPain): number | null => {
  const given = painsOf(pain).filter((value) => typeof value === 'number');
  return given.length === 0 ? null : Math.max(...given);
};

export const hasMissing = (pain: SessionPain): boolean => painsOf(pain).includes('missing');

const answerNames = morningQuestions.map(({ answer }) => answer.name);

const eachAnswer = (read: (name: AnswerName) => unknown) => {
  const answers: Partial<Record<AnswerName, unknown>> = {};
  for (const name of answerNames) answers[name] = read(name);
  return answers as Pick<MorningAnswers, AnswerName>;
};

const fromRow = (
  row: JointMorningAnswers,
  { clockDoubtful, amended = false, via, fatigue, otherJoint }: MorningRecord,
): MorningAnswers => {
  return {
    ...eachAnswer((name) => answered(row[name], clockDoubtful)),
    swellingQuestion: row.swellingQuestion ?? 'absolute',
    clockDoubtful,
    amended,
    ...(via === 'as-yesterday' ? { isAsYesterday: true } : {}),
    ...(fatigue === 'not-applicable' ? {} : { fatigue: answered(fatigue, clockDoubtful) }),
    ...(otherJoint === undefined ? {} : { otherJoint }),
  };
};

const unanswered: MorningAnswers = {
  ...eachAnswer(() => 'missing'),
  swellingQuestion: 'more-than-usual',
  clockDoubtful: false,
  amended: false,
};

export interface MorningsWanted {
  readonly mornings: readonly MorningRecord[];
  readonly sessions: readonly SessionRecord[];
  readonly joint: Joint;
  readonly since: Day;
  readonly today: Day;
}

/**
 * Mornings by day. A morning is due on the day after each session that asked about the joint; due
 * and not there is missing. Today is not counted as missing: it can still be answered.
 */
export const morningsByDay = (wanted: MorningsWanted): ReadonlyMap<Day, MorningAnswers> => {
  const { joint, since, today } = wanted;
  const byDay = new Map<Day, MorningAnswers>();
  for (const session of wanted.sessions) {
    const due = addDays(session.day, 1);
    if (due >= since && due < today && sessionPain(session, joint)) byDay.set(due, unanswered);
  }
  for (const morning of wanted.mornings) {
    if (morning.day < since || morning.day > today) continue;
    const row = morning.joints.find((one) => one.joint === joint);
    if (!row) continue;
    const before = byDay.get(morning.day);
    const read = fromRow(row, morning);
    const also =
      before && before !== unanswered && !read.amended ? [...(before.alsoPain ?? []), before.pain] : [];
    byDay.set(morning.day, also.length > 0 ? { ...read, alsoPain: also } : read);
  }
  return byDay;
};

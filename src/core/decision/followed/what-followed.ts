/**
 * What a patient told of a joint in the seven days after a decision: the first of these that holds. It followed; that
 * the decision brought it about is not said.
 */
import type { Joint } from '../../exercises/joints.ts';
import type { PatientRecord } from '../../record/record.ts';
import { type Day, daysBetween } from '../../time/day.ts';

const followedDays = 7;

export const followings = ['flare', 'over-limit', 'nothing', 'no-answer'] as const;
export type Following = (typeof followings)[number];

/** Days without an answer inside a flare that do not end it, as the rules have it. */
const bridgedDays = 2;

type Log = Pick<PatientRecord, 'sessions' | 'mornings'>;

interface FlareAnswer {
  readonly day: Day;
  readonly flare: boolean;
}

/** One answer a day: of two, that it flared. */
const flareAnswers = ({ mornings }: Log, joint: Joint): readonly FlareAnswer[] => {
  const byDay = new Map<Day, boolean>();
  for (const { day, joints, clockDoubtful } of mornings) {
    const flare = clockDoubtful ? null : (joints.find((one) => one.joint === joint)?.flare ?? null);
    if (flare !== null) byDay.set(day, flare || byDay.get(day) === true);
  }
  return [...byDay].map(([day, flare]) => ({ day, flare })).sort((a, b) => (a.day < b.day ? -1 : 1));
};

/** One that ran already when the decision was made did not follow it. */
const flareBegan = (answers: readonly FlareAnswer[], isWithin: (day: Day) => boolean): boolean =>
  answers.some(({ day, flare }, place) => {
    const before = answers[place - 1];
    const goesOn = before?.flare === true && daysBetween(before.day, day) <= bridgedDays + 1;
    return flare && !goesOn && isWithin(day);
  });

/** Every pain told of the joint; what was left open is none of them. */
const painsWithin = (log: Log, joint: Joint, isWithin: (day: Day) => boolean): readonly number[] => {
  const ofSessions = log.sessions
    .filter(({ day, clockDoubtful }) => !clockDoubtful && isWithin(day))
    .flatMap(({ joints }) => joints.filter((one) => one.joint === joint))
    .flatMap((one) => [one.painBefore, one.painDuring, one.painAfter, one.painTwoHours]);
  const ofMornings = log.mornings
    .filter(({ day, clockDoubtful }) => !clockDoubtful && isWithin(day))
    .flatMap(({ joints }) => joints.filter((one) => one.joint === joint))
    .map((one) => one.pain);
  return [...ofSessions, ...ofMornings].filter((pain) => typeof pain === 'number');
};

/**
 * Null while the seven days are not over: they may still bring something.
 * @param limit acceptable pain limit as it held for the decision
 */
export const whatFollowed = (
  log: Log,
  joint: Joint,
  day: Day,
  limit: number,
  today: Day,
): Following | null => {
  if (daysBetween(day, today) <= followedDays) return null;
  const isWithin = (on: Day): boolean => daysBetween(day, on) >= 1 && daysBetween(day, on) <= followedDays;
  const answers = flareAnswers(log, joint);
  if (flareBegan(answers, isWithin)) return 'flare';
  const pains = painsWithin(log, joint, isWithin);
  if (pains.some((pain) => pain > limit)) return 'over-limit';
  return pains.length > 0 || answers.some((one) => isWithin(one.day)) ? 'nothing' : 'no-answer';
};

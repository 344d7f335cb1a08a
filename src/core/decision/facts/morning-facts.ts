/** What the morning diary says of a joint at a moment beside its scores: the flare, swelling, stiffness. */
import type { JointMorningAnswers } from '#core/record/record.ts';
import { swellings } from '#core/record/record.ts';
import type { JointMorning } from './indexed-record.ts';
import { isKnown, morningsUpTo } from './judged-session.ts';

/** Unanswered days inside a flare that do not end it. */
const bridgedDays = 2;

/** First and last reported day number of a flare. */
export interface FlareSpan {
  readonly first: number;
  readonly last: number;
}

/** The flare that still runs; null without one. A flare ends with an answer of no and never with silence. */
export const flareAt = (list: readonly JointMorning[], day: number, instant: number): FlareSpan | null => {
  const days: number[] = [];
  let place = morningsUpTo(list, day) - 1;
  while (place >= 0) {
    const on = list[place]!.day;
    let flared: boolean | null = null;
    for (; place >= 0 && list[place]!.day === on; place--) {
      const one = list[place]!;
      if (one.morning.clockDoubtful || !isKnown(one, instant)) continue;
      if (one.answers.flare !== null) flared = flared || one.answers.flare;
    }
    if (flared === false) break;
    if (flared === null) continue;
    const first = days.at(-1);
    if (first !== undefined && first - on > bridgedDays + 1) break;
    days.push(on);
  }
  return days.length === 0 ? null : { first: days.at(-1)!, last: days[0]! };
};

/** Its length runs from its first to its last reported day, so silence does not lengthen it either. */
export const flareDaysAt = (list: readonly JointMorning[], day: number, instant: number): number => {
  const flare = flareAt(list, day, instant);
  return flare ? flare.last - flare.first + 1 : 0;
};

export interface JointState {
  readonly day: number;
  readonly swelling: JointMorningAnswers['swelling'];
  /** The swelling was asked against usual. */
  readonly isAgainstUsual: boolean;
  readonly stiffnessMinutes: JointMorningAnswers['stiffnessMinutes'];
  readonly flareAnswered: boolean;
}

type ToldSwelling = Pick<JointState, 'swelling' | 'isAgainstUsual'>;

/**
 * Of two answers on one day the one that asks for more caution. Answers to different questions are not
 * compared as words: of two alike, the answer against usual counts, since it holds whatever is usual.
 */
const worseSwelling = (a: ToldSwelling, b: ToldSwelling): ToldSwelling => {
  if (a.swelling === null || a.swelling === 'not-applicable') return b.swelling === null ? a : b;
  if (b.swelling === null || b.swelling === 'not-applicable') return a;
  const [first, second] = [swellings.indexOf(a.swelling), swellings.indexOf(b.swelling)];
  if (first === second) return b.isAgainstUsual ? b : a;
  return second > first ? b : a;
};

const longer = (
  a: JointState['stiffnessMinutes'],
  b: JointState['stiffnessMinutes'],
): JointState['stiffnessMinutes'] =>
  typeof a !== 'number' ? (b ?? a) : typeof b === 'number' ? Math.max(a, b) : a;

/** The latest day on or before `day` that tells of the joint; the worse of two answers on one day. */
export const jointStateAt = (
  list: readonly JointMorning[],
  day: number,
  instant: number,
): JointState | null => {
  let state: JointState | null = null;
  for (let place = morningsUpTo(list, day) - 1; place >= 0; place--) {
    const one = list[place]!;
    if (state && one.day !== state.day) break;
    if (!isKnown(one, instant)) continue;
    const doubtful = one.morning.clockDoubtful;
    const told: ToldSwelling = {
      swelling: doubtful ? null : one.answers.swelling,
      isAgainstUsual: one.answers.swellingQuestion === 'more-than-usual',
    };
    const stiffnessMinutes = doubtful ? null : one.answers.stiffnessMinutes;
    const flareAnswered = !doubtful && one.answers.flare !== null;
    state = state
      ? {
          day: state.day,
          ...worseSwelling(state, told),
          stiffnessMinutes: longer(state.stiffnessMinutes, stiffnessMinutes),
          flareAnswered: state.flareAnswered || flareAnswered,
        }
      : { day: one.day, ...told, stiffnessMinutes, flareAnswered };
  }
  return state;
};

/** Whether the patient has said how swollen the joint is after a day, up to another. */
export const hasToldSwellingSince = (
  list: readonly JointMorning[],
  after: number,
  upTo: number,
  instant: number,
): boolean => {
  for (let place = morningsUpTo(list, upTo) - 1; place >= 0; place--) {
    const one = list[place]!;
    if (one.day <= after) return false;
    const { swelling } = one.answers;
    if (swelling === null || swelling === 'not-applicable' || one.morning.clockDoubtful) continue;
    if (isKnown(one, instant)) return true;
  }
  return false;
};

/**
 * Which session, and which next morning, an evaluation speaks of. The choice depends on when things
 * were done and entered, never on how the joint felt, so no symptom can move it.
 */

import type { Joint } from '#core/exercises/joints.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { morningStateAt } from '../morning-window.ts';
import type { EngineSettingValues } from '../settings.ts';
import { countUpTo } from './count-up-to.ts';
import type { JointMorning, JointSession, RecordIndex } from './indexed-record.ts';

export interface Moment {
  /** Epoch milliseconds; entries recorded later are not known yet. */
  readonly instant: number;
  /** Civil day of the patient at that instant. */
  readonly day: Day;
}

export interface Judged {
  /** Where the session stands among those that loaded the joint; −1 without one. */
  readonly place: number;
  readonly session: JointSession | null;
  /** The session before it that loaded the joint. */
  readonly previous: JointSession | null;
  /** First answer inside the morning window of the day after. */
  readonly nextMorning: JointMorning | null;
  readonly state: 'no-session' | 'waiting-for-morning' | 'morning-missed' | 'complete';
}

const none: readonly never[] = [];

export const mornings = (index: RecordIndex, joint: Joint): readonly JointMorning[] =>
  index.morningsOf.get(joint) ?? none;

const sessionDay = (one: { readonly day: number }): number => one.day;
const sessionBegan = (one: JointSession): number => one.began;

/** Entries recorded after the moment are not known yet. */
export const isKnown = ({ morning }: JointMorning, instant: number): boolean => morning.recordedAt <= instant;

/** A morning score counts when its clock is trusted and it was given inside the morning window. */
export const isMorningScore = ({ morning }: JointMorning, settings: EngineSettingValues): boolean =>
  !morning.clockDoubtful &&
  (morning.localMinute === undefined ||
    morningStateAt(morning.localMinute, settings['morning-from-hour'], settings['morning-to-hour']) ===
      'open');

/** How many of the joint's mornings lie on or before a day. */
export const morningsUpTo = (list: readonly JointMorning[], day: number): number =>
  countUpTo(list, day, sessionDay);

export const morningScoreOn = (
  list: readonly JointMorning[],
  day: number,
  instant: number,
  settings: EngineSettingValues,
): JointMorning | null => {
  for (let place = morningsUpTo(list, day - 1); place < list.length && list[place]!.day === day; place++) {
    const one = list[place]!;
    if (isKnown(one, instant) && isMorningScore(one, settings)) return one;
  }
  return null;
};

const knownBefore = (list: readonly JointSession[], from: number, instant: number): number => {
  let place = from;
  while (place >= 0 && list[place]!.session.recordedAt > instant) place--;
  return place;
};

export const judgedSession = (
  index: RecordIndex,
  joint: Joint,
  at: Moment,
  settings: EngineSettingValues,
): Judged => {
  const list = index.sessionsOf.get(joint) ?? none;
  const place = knownBefore(list, countUpTo(list, at.instant, sessionBegan) - 1, at.instant);
  const session = list[place];
  if (!session) return { place: -1, session: null, previous: null, nextMorning: null, state: 'no-session' };
  const previous = list[knownBefore(list, place - 1, at.instant)] ?? null;
  const nextMorning = morningScoreOn(mornings(index, joint), session.day + 1, at.instant, settings);
  const today = dayNumber(at.day);
  const state = nextMorning
    ? 'complete'
    : today <= session.day + 1
      ? 'waiting-for-morning'
      : 'morning-missed';
  return { place, session, previous, nextMorning, state };
};

/** What the morning scores of a joint say at a moment: the week's mean, those before a session, those in a row. */
import type { EngineSettingValues } from '../settings.ts';
import type { JointMorning } from './indexed-record.ts';
import { isKnown, isMorningScore, morningsUpTo } from './judged-session.ts';

/** Fewer answers than this in seven days give no mean. */
const leastAnswersForMean = 4;

/**
 * Morning scores from the day after `after` to `upTo`, oldest first. The first score of a day counts; a
 * second answer on one day is not a second morning.
 */
export const morningScores = (
  list: readonly JointMorning[],
  after: number,
  upTo: number,
  instant: number,
  settings: EngineSettingValues,
): readonly number[] => {
  const scores: number[] = [];
  let counted = Number.NaN;
  for (let place = morningsUpTo(list, after); place < list.length && list[place]!.day <= upTo; place++) {
    const one = list[place]!;
    if (one.day === counted || one.answers.pain === null) continue;
    if (!isKnown(one, instant) || !isMorningScore(one, settings)) continue;
    counted = one.day;
    scores.push(one.answers.pain);
  }
  return scores;
};

/** Mean of the morning scores of the last `days` days, `day` included; null under `least` answers. */
export const meanOfMornings = (
  list: readonly JointMorning[],
  day: number,
  days: number,
  least: number,
  instant: number,
  settings: EngineSettingValues,
): number | null => {
  const scores = morningScores(list, day - days, day, instant, settings);
  return scores.length < least ? null : scores.reduce((sum, score) => sum + score, 0) / scores.length;
};

export const morningPainMean7 = (
  list: readonly JointMorning[],
  day: number,
  instant: number,
  settings: EngineSettingValues,
): number | null => meanOfMornings(list, day, 7, leastAnswersForMean, instant, settings);

/** The last morning score in the week before a day; null when none was given. */
export const previousMorningPain = (
  list: readonly JointMorning[],
  beforeDay: number,
  instant: number,
  settings: EngineSettingValues,
): number | null => {
  for (let place = morningsUpTo(list, beforeDay - 1) - 1; place >= 0; place--) {
    const one = list[place]!;
    if (one.day < beforeDay - 7) return null;
    if (one.answers.pain !== null && isKnown(one, instant) && isMorningScore(one, settings)) {
      return one.answers.pain;
    }
  }
  return null;
};

/** Days before a session in which a morning still speaks beside the one after it. */
const beforeSessionDays = 7;
/** Mornings before a session that are looked at. */
const morningsBefore = 2;
/** How far over the usual band such a morning lies. */
const clearlyOver = 2;

/** Whether one of the two answered mornings before a session, up to its own day, lay clearly over the usual band. */
export const twoOverBefore = (
  list: readonly JointMorning[],
  sessionDay: number,
  top: number,
  instant: number,
  settings: EngineSettingValues,
): boolean =>
  morningScores(list, sessionDay - beforeSessionDays, sessionDay, instant, settings)
    .slice(-morningsBefore)
    .some((score) => score >= top + clearlyOver);

/** Days looked back over: far more than the longest row a clinic may ask for. */
const overTopDays = 56;

/** Answered mornings in a row, up to the newest, at least 1 over the usual band. A day left out neither counts nor ends it. */
export const morningsOverTop = (
  list: readonly JointMorning[],
  day: number,
  top: number,
  instant: number,
  settings: EngineSettingValues,
): number => {
  const scores = morningScores(list, day - overTopDays, day, instant, settings);
  return scores.length - 1 - scores.findLastIndex((score) => score < top + 1);
};

/**
 * The first morning answered in the days after a next morning that was left out, before any new session:
 * the judged session is the newest one, so every later morning lies before the next.
 */
export const laterMorningPain = (
  list: readonly JointMorning[],
  sessionDay: number,
  day: number,
  instant: number,
  settings: EngineSettingValues,
): number | null => {
  const last = Math.min(day, sessionDay + 1 + settings['later-morning-days']);
  return morningScores(list, sessionDay + 1, last, instant, settings)[0] ?? null;
};

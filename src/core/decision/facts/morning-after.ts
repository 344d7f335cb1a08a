/**
 * The morning after one session, and the moment at which it was judged: as the rules saw it then, and not as
 * later entries would have it. It says nothing where another session was judged by then, as after one that was
 * entered late or one of two on a day.
 */
import type { Joint } from '#core/exercises/joints.ts';
import { dayFromNumber } from '#core/time/day.ts';
import type { EngineSettingValues } from '../settings.ts';
import type { IndexedSession, RecordIndex } from './indexed-record.ts';
import { judgedSession, type Moment, morningScoreOn, mornings } from './judged-session.ts';

export const morningAfter = (
  index: RecordIndex,
  indexed: IndexedSession,
  joint: Joint,
  /** Entries recorded later are not known yet. */
  instant: number,
  settings: EngineSettingValues,
): Moment | 'no-answer' | 'another-session' => {
  const next = morningScoreOn(mornings(index, joint), indexed.day + 1, instant, settings);
  if (!next) return 'no-answer';
  const then = {
    instant: Math.max(next.morning.recordedAt, indexed.session.recordedAt, indexed.began),
    day: dayFromNumber(indexed.day + 1),
  };
  const judged = judgedSession(index, joint, then, settings).session;
  return judged?.session === indexed.session ? then : 'another-session';
};

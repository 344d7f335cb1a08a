/**
 * Where a person stands over all episodes of care on a day, and which days are taken out of what was
 * planned. A break is no silence and no missed session; a choice of this project.
 */

import type { PlannedSession } from '../prescribing/programme/planned-session.ts';
import { addDays, type Day } from '../time/day.ts';
import {
  type BreakKind,
  closedStates,
  type Episode,
  type EpisodeChange,
  type EpisodeState,
} from './episode.ts';

/** The change that holds on a day; null before it was opened. */
const changeOn = (episode: Pick<Episode, 'changes'>, day: Day): EpisodeChange | null =>
  episode.changes.findLast((change) => change.on <= day) ?? null;

interface Return {
  readonly on: Day;
  readonly from: BreakKind | 'end-of-care';
}

export interface EpisodeStatus {
  /** "not-recorded": nobody has opened an episode of care, so nothing follows from one. */
  readonly state: 'not-recorded' | 'in-care' | 'on-break' | 'closed';
  /** The change that made it so; null when not recorded. */
  readonly change: EpisodeChange | null;
  /** The last return from a break or after an end of care, whatever came after it. */
  readonly returned: Return | null;
}

const newest = (changes: readonly EpisodeChange[]): EpisodeChange | null =>
  changes.reduce<EpisodeChange | null>(
    (best, next) =>
      !best || next.on > best.on || (next.on === best.on && next.recordedAt >= best.recordedAt) ? next : best,
    null,
  );

const returnsOf = (episode: Pick<Episode, 'changes'>, day: Day) =>
  episode.changes.flatMap((change, place) => {
    const before = episode.changes[place - 1];
    return change.to === 'active' && before?.breakKind && change.on <= day
      ? [{ on: change.on, from: before.breakKind }]
      : [];
  });

/** An episode opened after all others had ended: the person comes back from outside of care. */
const comeback = (episodes: readonly Pick<Episode, 'changes'>[], day: Day): readonly Return[] =>
  episodes.flatMap((episode): readonly Return[] => {
    const opened = episode.changes[0];
    if (!opened || opened.on > day) return [];
    const before = episodes
      .filter((other) => other !== episode)
      .map((other) => other.changes.findLast((change) => change.recordedAt < opened.recordedAt))
      .filter((change) => change !== undefined);
    const isBack = before.length > 0 && before.every((change) => closedStates.includes(change.to));
    return isBack ? [{ on: opened.on, from: 'end-of-care' }] : [];
  });

/** Where the person stands over all episodes: in care as long as one goes on. */
export const episodeStatusOn = (episodes: readonly Pick<Episode, 'changes'>[], day: Day): EpisodeStatus => {
  const episodeStatus = episodes.map((episode) => changeOn(episode, day)).filter((change) => change !== null);
  const returns: readonly Return[] = [
    ...episodes.flatMap((episode) => returnsOf(episode, day)),
    ...comeback(episodes, day),
  ];
  const returned = returns.toSorted((a, b) => (a.on < b.on ? -1 : 1)).at(-1) ?? null;
  const of = (...states: EpisodeState[]) =>
    newest(episodeStatus.filter((change) => states.includes(change.to)));
  if (episodeStatus.length === 0) return { state: 'not-recorded', change: null, returned };
  const going = of('open', 'active');
  if (going) return { state: 'in-care', change: going, returned };
  const resting = of('on-break');
  if (resting) return { state: 'on-break', change: resting, returned };
  return { state: 'closed', change: of('discharged', 'transferred', 'died'), returned };
};

/** Days from `from` to `to` on which nothing is planned: every episode is on a break or closed. */
export const daysOff = (
  episodes: readonly Pick<Episode, 'changes'>[],
  from: Day,
  to: Day,
): ReadonlySet<Day> => {
  const off = new Set<Day>();
  if (episodes.length === 0) return off;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const { state } = episodeStatusOn(episodes, day);
    if (state === 'on-break' || state === 'closed') off.add(day);
  }
  return off;
};

/** Planned sessions without the days of an agreed break: what was not planned was not missed. */
export const withoutDaysOff = (
  planned: readonly PlannedSession[],
  off: ReadonlySet<Day>,
): readonly PlannedSession[] => planned.filter(({ day }) => !off.has(day));

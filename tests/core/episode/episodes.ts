/** Small episodes of care for tests, written as their changes. */
import type { Episode, EpisodeChange, EpisodeState, WantedChange } from '#core/episode/episode.ts';

export const change = (to: EpisodeState, on: string, more: Partial<EpisodeChange> = {}): EpisodeChange => ({
  to,
  on,
  reason: 'Test',
  breakKind: to === 'on-break' ? 'holiday' : null,
  expectedBack: null,
  recordedAt: Date.parse(`${on}T09:00:00Z`),
  by: 'Clinician',
  ...more,
});

export const wanted = (to: EpisodeState, on: string, more: Partial<WantedChange> = {}): WantedChange => {
  const { recordedAt: _at, by: _by, ...rest } = change(to, on);
  return { ...rest, ...more };
};

export const episode = (...changes: readonly EpisodeChange[]): Episode => ({
  id: `episode-${changes[0]?.on}`,
  diagnoses: ['Knee osteoarthritis'],
  joints: ['right-knee'],
  followedJoints: ['right-knee'],
  goals: ['Climb my stairs'],
  referrer: null,
  contacts: [],
  changes,
});

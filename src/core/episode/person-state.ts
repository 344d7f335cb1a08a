/**
 * Where a person stands, in the one word the bar of the record shows. Danger outweighs everything: a sign
 * told after the end of care is still a sign. A choice of this project.
 */
import type { Pause } from '../danger/danger.ts';
import type { PauseState, SignState } from '../danger/danger-state.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';
import type { EpisodeState } from './episode.ts';
import type { EpisodeStatus } from './episode-status.ts';

type Why = Pick<Pause, 'cause' | 'reason' | 'until'> & { readonly since: number };

export type PersonState =
  /** Told, and no contact has reached the patient since. */
  | { readonly state: 'warning-sign'; readonly since: number }
  | ({ readonly state: 'paused' } & Why)
  | { readonly state: 'closed'; readonly on: Day; readonly to: EpisodeState }
  /** `expectedBack`: null = no day is known. */
  | { readonly state: 'on-break'; readonly on: Day; readonly expectedBack: Day | null }
  | ({ readonly state: 'joint-paused'; readonly joint: Joint } & Why)
  | { readonly state: 'in-care' | 'not-recorded' };

const oldest = (pauses: readonly PauseState[]): PauseState['pause'] | undefined =>
  pauses.map(({ pause }) => pause).toSorted((a, b) => a.at - b.at)[0];

const whyOf = ({ cause, reason, until, at }: Pause): Why => ({ cause, reason, until, since: at });

export const personStateOf = (
  signs: readonly SignState[],
  pauses: readonly PauseState[],
  { state, change }: EpisodeStatus,
): PersonState => {
  const sign = signs.find(({ endedBy }) => endedBy === null);
  if (sign) return { state: 'warning-sign', since: sign.sign.reportedAt };
  const whole = oldest(pauses.filter(({ pause }) => pause.joint === null));
  if (whole) return { state: 'paused', ...whyOf(whole) };
  if (change && state === 'closed') return { state, on: change.on, to: change.to };
  if (change && state === 'on-break') return { state, on: change.on, expectedBack: change.expectedBack };
  const part = oldest(pauses);
  if (part?.joint) return { state: 'joint-paused', joint: part.joint, ...whyOf(part) };
  return { state: state === 'not-recorded' ? 'not-recorded' : 'in-care' };
};

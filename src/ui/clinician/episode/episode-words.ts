/** States of an episode of care in words, each with a shape. */
import type { BreakKind, EpisodeState } from '#core/episode/episode.ts';
import { say } from '#messages/en/staff/episode.ts';
import type { Shape } from '#ui/design-system/mark.tsx';
import type { StatusTone } from '#ui/design-system/status-tag.tsx';

export const stateInWords: Readonly<Record<EpisodeState, string>> = {
  open: 'Opened',
  active: say('in-care'),
  'on-break': say('on-a-break'),
  discharged: 'Discharged',
  transferred: 'Transferred',
  died: 'Died',
};

/** What recording the change is called on its button, from where it stands. */
export const changeInWords = (from: EpisodeState, to: EpisodeState): string => {
  if (to === 'active') return from === 'on-break' ? 'Returned' : say('care-begins');
  return {
    open: 'Open',
    'on-break': say('begin-a-break'),
    discharged: 'Discharge',
    transferred: 'Transfer',
    died: 'Died',
  }[to];
};

export const breakInWords: Readonly<Record<BreakKind, string>> = {
  holiday: 'holiday',
  illness: 'illness',
  hospital: say('in-hospital'),
};

export const stateStatus: Readonly<
  Record<EpisodeState, { readonly shape: Shape; readonly tone: StatusTone }>
> = {
  open: { shape: 'note', tone: 'plain' },
  active: { shape: 'forward', tone: 'accent' },
  'on-break': { shape: 'level', tone: 'care' },
  discharged: { shape: 'done', tone: 'soft' },
  transferred: { shape: 'done', tone: 'soft' },
  died: { shape: 'closed', tone: 'soft' },
};

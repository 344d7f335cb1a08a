/**
 * The work an item asks for, in the order of a round. It follows the order of the kinds, so that heading the
 * list by it moves nothing down; a pause left by a warning sign alone moves up, into the block of danger.
 */
import type { DueItem, WorklistItemKind } from './item.ts';

export const works = ['danger', 'speak', 'sign', 'no-answers', 'reply', 'look', 'due'] as const;
export type Work = (typeof works)[number];

const workOfKind: Readonly<Record<WorklistItemKind, Work>> = {
  'red-flag': 'danger',
  pause: 'danger',
  'same-day-contact': 'danger',
  'danger-passed': 'danger',
  'eased-twice': 'speak',
  'dose-stopped': 'speak',
  'floor-reached': 'speak',
  'entry-conflict': 'speak',
  'ease-back': 'speak',
  'resume-due': 'speak',
  'awaiting-signature': 'sign',
  'clock-doubtful': 'no-answers',
  'missing-answers': 'no-answers',
  message: 'reply',
  'reported-new': 'look',
  'event-review': 'look',
  'pre-visit-answers': 'look',
  'phase-due': 'look',
  'limit-ended': 'look',
  'routine-contact': 'due',
  'review-day': 'due',
  'break-over': 'due',
  'screening-due': 'due',
  'override-ended': 'due',
  'pressure-due': 'due',
  'retest-due': 'due',
  'baseline-due': 'due',
};

export const workOf = ({ kind, facts }: Pick<DueItem, 'kind' | 'facts'>): Work =>
  kind === 'resume-due' && facts.cause === 'warning-sign' ? 'danger' : workOfKind[kind];

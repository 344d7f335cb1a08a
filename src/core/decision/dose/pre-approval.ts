/**
 * Steps a clinician signed for ahead: at most three, or four weeks. It ends at any ease-back, pause,
 * new limit or expiry of the screening, can be withdrawn, and never covers occlusion pressure, a step
 * over 10 %, one of unknown size, one that loads further joints, or a return.
 */

import type { Limit } from '#core/record/limit.ts';
import type { PrescriptionVersion } from '#core/record/record.ts';
import { type Day, dayMilliseconds, dayNumber } from '#core/time/day.ts';
import type { DecisionWord } from '../answers.ts';
import type { EngineSettingValues } from '../settings.ts';
import type { Candidate } from './proposal.ts';

export interface PreApproval {
  readonly id: string;
  readonly itemId: string;
  readonly signedAt: number;
  /** The clinic's civil day of it. */
  readonly signedDay: Day;
  readonly signedBy: string;
  readonly steps: number;
  readonly days: number;
  readonly withdrawnAt: number | null;
}

export interface ApprovalContext {
  readonly instant: number;
  readonly day: number;
  readonly history: readonly PrescriptionVersion[];
  /** Decisions on the line since the pre-approval was signed. */
  readonly decisionsSince: readonly DecisionWord[];
  readonly limits: readonly Limit[];
  /** Last day on which the screening is current; null = not screened, which covers nothing. */
  readonly screeningUntil: number | null;
  readonly settings: EngineSettingValues;
}

export type ApprovalEnd =
  | 'withdrawn'
  | 'other-line'
  | 'steps-used'
  | 'days-over'
  | 'eased-back-or-paused'
  | 'new-limit'
  | 'screening-expired'
  | 'step-not-covered';

/** null when the pre-approval covers the step; otherwise why it does not. */
export const approvalEnd = (
  approval: PreApproval,
  candidate: Candidate,
  itemId: string,
  context: ApprovalContext,
): ApprovalEnd | null => {
  const { settings, instant, day } = context;
  if (approval.withdrawnAt !== null && approval.withdrawnAt <= instant) return 'withdrawn';
  if (approval.itemId !== itemId) return 'other-line';
  const since = context.history.filter((version) => version.signedAt > approval.signedAt);
  if (since.some((version) => version.origin === 'ease-back')) return 'eased-back-or-paused';
  if (context.decisionsSince.some((word) => word === 'ease-back' || word === 'pause')) {
    return 'eased-back-or-paused';
  }
  const taken = since.filter((version) => version.origin === 'progress').length;
  if (taken >= Math.min(approval.steps, settings['pre-approval-steps'])) return 'steps-used';
  const days = Math.min(approval.days, settings['pre-approval-days']);
  if (instant - approval.signedAt > days * dayMilliseconds) return 'days-over';
  if (context.limits.some((limit) => limit.kind !== 'none' && limitBeganSince(limit, approval.signedDay))) {
    return 'new-limit';
  }
  if (context.screeningUntil === null || context.screeningUntil < day) return 'screening-expired';
  const uncovered = ['over-ten-percent', 'step-size-unknown', 'return-not-step', 'loads-more-joints'];
  const isCovered = candidate.kind === 'step' && !candidate.named?.some((name) => uncovered.includes(name));
  return isCovered ? null : 'step-not-covered';
};

/** From the day of signing on, so that a limit of the same day ends it too. */
const limitBeganSince = (limit: Limit, signedDay: Day): boolean =>
  dayNumber(limit.from) >= dayNumber(signedDay);

/**
 * A clinician's clearance opens what is clearable, with precautions, and never hides the reason.
 *
 * It reaches reasons found on or before its day only: a new screening or a new reading asks again.
 * A clearance without a name or a reason clears nothing.
 */
import type { Day } from '../time/day.ts';
import type { DatedReason, Target } from './reasons-from-answers.ts';
import type { Clearance } from './screening.ts';

const covers = (clearance: Clearance, target: Target, reason: DatedReason, today: Day): boolean =>
  clearance.method === target.method &&
  (clearance.limb === null || clearance.limb === target.limb) &&
  (clearance.side === null || clearance.side === target.side) &&
  clearance.findings.includes(reason.code) &&
  clearance.day >= reason.since &&
  clearance.day <= today &&
  clearance.by.trim() !== '' &&
  clearance.reason.trim() !== '';

export const afterClearances = (
  reason: DatedReason,
  target: Target,
  clearances: readonly Clearance[],
  today: Day,
): DatedReason => {
  if (reason.eligibility !== 'closed-until-cleared') return reason;
  const clearance = clearances.find((candidate) => covers(candidate, target, reason, today));
  if (!clearance) return reason;
  return {
    ...reason,
    eligibility: 'open-with-precautions',
    text: `${reason.text} Cleared by ${clearance.by} on ${clearance.day}: ${clearance.reason}`,
  };
};

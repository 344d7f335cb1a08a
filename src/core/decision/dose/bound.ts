/** A proposed dose inside the limits a clinician entered: brought down, kept from another exercise, or stopped. */
import { limitRefusals } from '#core/episode/limit-bounds.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import type { Day } from '#core/time/day.ts';
import { type LimitInForce, loadCeilingKg, withinLoadLimit } from './limits.ts';
import type { Candidate, WorklistReason } from './proposal.ts';

/** The candidate inside the clinician's limits, whatever the decision was. */
export const boundByLimits = (
  candidate: Candidate,
  present: Dose,
  limits: readonly LimitInForce[],
  owned: readonly number[],
): Candidate => {
  const dose = withinLoadLimit(candidate.dose, loadCeilingKg(limits), owned);
  if (dose === candidate.dose) return candidate;
  const worklist: readonly WorklistReason[] = [...(candidate.worklist ?? [])];
  if (!dose)
    return { ...candidate, kind: 'stop', dose: present, worklist: [...worklist, 'no-dose-within-limit'] };
  const named = [...(candidate.named ?? []), 'bound-by-limit'] as const;
  return { ...candidate, kind: candidate.kind === 'stop' ? 'stop' : 'ease-back', dose, named, worklist };
};

/** Another exercise may bear weight or go further than the one signed: a limit on either keeps it away. */
export const keptFromClosed = (
  candidate: Candidate,
  present: Dose,
  limits: readonly Limit[],
  day: Day,
): Candidate => {
  const isOther = candidate.dose.exerciseId !== present.exerciseId;
  if (!isOther || limitRefusals(limits, candidate.dose, day).length === 0) return candidate;
  return candidate.kind === 'ease-back'
    ? { kind: 'stop', dose: present, worklist: ['no-dose-within-limit'] }
    : { kind: 'same', dose: present, worklist: ['limit-stands-in-the-way'] };
};

/**
 * Where each patient of a clinic stands for one reader: every patient in exactly one group, so that no
 * count reassures about somebody who was snoozed, given away or never looked at.
 */
import type { Day } from '../time/day.ts';

export const worklistGroups = [
  'needs-you',
  'assigned',
  'snoozed',
  'paused',
  'not-screened',
  'nothing-found',
  'discharged',
] as const;
export type WorklistGroup = (typeof worklistGroups)[number];

/** An item that shows today, snoozed or not. */
export interface DueNow {
  readonly assignedTo: string | null;
  readonly snoozedUntil: Day | null;
}

export interface Standing {
  readonly due: readonly DueNow[];
  /** A pause is in force whose day to look at has not come. */
  readonly isPaused: boolean;
  readonly isScreened: boolean;
  /** Every episode of care has ended. */
  readonly isDischarged: boolean;
  /** False for a record kept to a team the reader is not in: of it only danger is looked for. */
  readonly isMine: boolean;
}

export const isSnoozed = ({ snoozedUntil }: DueNow, today: Day): boolean =>
  snoozedUntil !== null && snoozedUntil >= today;

/** null = kept to another team, with nothing urgent: not counted among those for whom nothing was found. */
export const groupOf = (standing: Standing, reader: string, today: Day): WorklistGroup | null => {
  const awake = standing.due.filter((item) => !isSnoozed(item, today));
  if (awake.some(({ assignedTo }) => assignedTo === null || assignedTo === reader)) return 'needs-you';
  if (awake.length > 0) return 'assigned';
  if (!standing.isMine) return null;
  if (standing.due.length > 0) return 'snoozed';
  if (standing.isDischarged) return 'discharged';
  if (standing.isPaused) return 'paused';
  return standing.isScreened ? 'nothing-found' : 'not-screened';
};

/** A screening as recorded: one version, dated, never edited. */

import type { Limb, Side } from '../exercises/joints.ts';
import type { Eligibility, Method } from '../prescribing/methods.ts';
import type { Day } from '../time/day.ts';

/** "Not applicable" is offered by few items and counts as no; what is not known is never no. */
export const screeningAnswers = ['yes', 'no', 'not-known', 'not-applicable'] as const;
export type ScreeningAnswer = (typeof screeningAnswers)[number];

export interface ScreeningItemAnswer {
  readonly item: string;
  readonly answer: ScreeningAnswer;
  /** Limbs the answer speaks of, for items that close one limb. */
  readonly limbs?: readonly { readonly limb: Limb; readonly side: Side }[];
  /** Joints the answer speaks of. */
  readonly joints?: readonly string[];
  /** Chosen sub-answers, such as medicine classes. */
  readonly details?: readonly string[];
  /** The day it last happened, where the item asks for it. */
  readonly day?: Day;
  /** Free words beside the answer, at most 200 characters: which medicine, INR, date, which leg. */
  readonly note?: string;
  /** Day it was answered, where that is another than the screening's. */
  readonly askedOn?: Day;
}

export interface Screening {
  readonly version: number;
  readonly sheetVersion: string;
  readonly day: Day;
  readonly answers: readonly ScreeningItemAnswer[];
}

/** A clinician's clearance of a clearable closing, with reason and name. */
export interface Clearance {
  readonly method: Method;
  readonly limb: Limb | null;
  readonly side: Side | null;
  /** Reason codes cleared. */
  readonly findings: readonly string[];
  readonly reason: string;
  readonly by: string;
  readonly day: Day;
}

/** What screening leaves of one method on one limb, with every reason. */
export interface MethodOutcome {
  readonly method: Method;
  readonly limb: Limb;
  readonly side: Side;
  readonly eligibility: Eligibility;
  readonly reasons: readonly MethodReason[];
}

export interface MethodReason {
  /** Stable code, such as "past-clot". */
  readonly code: string;
  /** Screening item or measurement that caused it. */
  readonly from: string;
  readonly eligibility: Eligibility;
  /** One sentence for the clinician. */
  readonly text: string;
  /** Who may clear it, or null where nobody may. */
  readonly clearedBy: 'clinician' | 'physician' | null;
  readonly support: string;
}

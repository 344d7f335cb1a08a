/** What a decision proposes for one prescribed exercise: a whole dose, and how it takes effect. */

import type { Side } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Contact, DecisionWord } from '../answers.ts';
import type { LimitInForce } from './limits.ts';
import type { DoseChange } from './volume.ts';

/** Said beside the proposal, because a reader could take the change for something else. */
export type Naming =
  | 'over-ten-percent'
  | 'step-size-unknown'
  | 'return-not-step'
  | 'repetitions-start-again'
  | 'loads-more-joints'
  | 'bound-by-limit';

/** Facts that put the patient on the worklist. */
export type WorklistReason =
  | 'two-ease-backs'
  | 'floor-reached'
  | 'nothing-left-to-step'
  | 'side-to-choose'
  | 'one-rep-max-missing'
  | 'limit-stands-in-the-way'
  | 'limit-expired'
  | 'no-dose-within-limit';

/** Why an ease-back left the dose as it is. */
export type CutWithheld =
  | 'cut-this-week'
  | 'cut-this-flare'
  | 'cut-last-flare'
  | 'floor-reached'
  | 'easier-in-flare'
  | 'tolerated-lately';
/** Why the dose stays although the decision would move it. */
type Withheld = CutWithheld | 'step-this-week' | 'machine-step';

export interface DoseProposal {
  readonly decision: DecisionWord;
  readonly kind: 'same' | 'step' | 'ease-back' | 'return' | 'stop';
  /**
   * Reductions act at once, and since version 2 repetitions inside the signed band; other increases wait for a
   * signature or lean on a signed pre-approval.
   */
  readonly effect: 'acts-at-once' | 'awaits-signature' | 'repeat';
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly changes: readonly DoseChange[];
  readonly named: readonly Naming[];
  readonly withheld: Withheld | null;
  readonly contact: Contact;
  readonly worklist: readonly WorklistReason[];
  readonly limits: readonly LimitInForce[];
  /** Set when a pre-approval lets an increase act by itself. */
  readonly preApprovalId: string | null;
}

/** A dose on the way to a proposal, before limits and signatures are looked at. */
export interface Candidate {
  readonly kind: DoseProposal['kind'];
  readonly dose: Dose;
  readonly named?: readonly Naming[];
  readonly withheld?: Withheld;
  readonly worklist?: readonly WorklistReason[];
}

/** One neighbour on the ladder of an exercise, for this person and what they own. */
export interface LadderStep {
  readonly exerciseId: string;
  readonly effectiveLoadKg: number | null;
  readonly stepPercent: number | null;
  readonly equipmentOwned: boolean;
  /** Side on which the work goes on; null where a clinician has to choose it; left out = unchanged. */
  readonly side?: Side | 'both' | null;
  /** It loads a joint, or brings a caution, that the present exercise does not. */
  readonly addsDemand?: boolean;
}

/** The catalogue's ladders as the dose rules need them. */
export interface Ladder {
  readonly harder: (exerciseId: string, side: Side | 'both') => LadderStep | null;
  readonly easier: (exerciseId: string, side: Side | 'both') => LadderStep | null;
}

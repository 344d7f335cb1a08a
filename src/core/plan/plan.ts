/**
 * The one plan: what stands for each prescribed exercise now, why, and what is asked of whom by when.
 * The phone's day, review, worklist, handover, documents and next doses read this and work nothing out
 * for themselves.
 */
import type { PauseState, SignState } from '../danger/danger-state.ts';
import type { Answers, Contact, Today } from '../decision/answers.ts';
import type { DecisionInForce } from '../decision/decisions-in-force.ts';
import type { Suspension } from '../episode/suspensions.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Day } from '../time/day.ts';
import type { Ask } from './asks.ts';

/** What each cause leaves of an exercise. Reasons only ever take away: the most cautious of all of them stands. */
export type PlanReason = {
  readonly today: Today;
} & (
  | { readonly code: 'warning-sign'; readonly signId: string }
  | { readonly code: 'paused'; readonly pauseId: string }
  | { readonly code: 'decision'; readonly decisionId: string; readonly joint: Joint }
  | { readonly code: Suspension['code'] }
  | {
      readonly code: 'contraindicated' | 'needs-clearance';
      /** Day of the screening it stands in, or today where there is none. */
      readonly foundOn: Day;
      /** What was found, for the clinician. */
      readonly findings: readonly { readonly code: string; readonly text: string }[];
    }
  | { readonly code: 'limit-closes'; readonly joint: Joint; readonly foundOn: Day; readonly text: string }
  | {
      readonly code: 'limit-load';
      readonly joint: Joint;
      readonly foundOn: Day;
      readonly limitKg: number;
      readonly author: string;
    }
  /** Signed for a machine that is gone from the clinic, or for a load that can no longer be set on it. */
  | {
      readonly code: 'machine-gone' | 'machine-load-gone';
      readonly machine: string;
      /** Of the machine as it is entered now, and the instant at which it was; 0 = not known. */
      readonly version: number;
      readonly since: number;
    }
  | { readonly code: 'news-today' }
  /** A joint was injected lately; null = nobody named which. */
  | {
      readonly code: 'injection-easier';
      readonly joint: Joint | null;
      readonly injectedOn: Day;
      /** Last day of the easier session. */
      readonly until: Day;
    }
  /** A break before this session. */
  | { readonly code: 'gap-easier' | 'gap-ring-first'; readonly lastOn: Day }
);

export interface PlanItem extends Omit<Answers, 'reasons'> {
  readonly itemId: string;
  readonly prescriptionId: string;
  readonly exerciseId: string;
  readonly joints: readonly Joint[];
  /** The dose as signed, within every limit; null where it is over one, or gone from its machine. */
  readonly dose: Dose | null;
  /** The easier session as signed, its load lowered to a limit where needed; null where none is left. */
  readonly easierSession: Dose | null;
  /**
   * Instant before which no test to failure is done: enough hours after the last session that loaded one of
   * the joints. null = nothing loaded them lately. The gate before a test is that of a session: `today`.
   */
  readonly testFrom: number | null;
  /** Only what takes something away, most cautious first; empty = as signed. */
  readonly reasons: readonly PlanReason[];
}

/** What limits say of an exercise beside what stands of it today. */
export interface StoppedByLimit {
  readonly itemId: string;
  readonly exerciseId: string;
  readonly reasons: readonly PlanReason[];
}

export interface Plan {
  readonly items: readonly PlanItem[];
  /** What a limit entered ahead will stop, from the day its reasons name. */
  readonly coming: readonly StoppedByLimit[];
  /** What was signed above a limit and eased back since, and no clinician has written anew. */
  readonly lowered: readonly StoppedByLimit[];
  /** Newest decision or answer in force, by joint. */
  readonly joints: ReadonlyMap<Joint, DecisionInForce>;
  /** What the decisions ask of the clinic. */
  readonly asks: readonly Ask[];
  /** Every sign, ended ones included, oldest first. */
  readonly signs: readonly SignState[];
  readonly pauses: readonly PauseState[];
  /** The most urgent contact anything in force asks for. */
  readonly contact: Contact;
}

export const openSigns = ({ signs }: Pick<Plan, 'signs'>): readonly SignState[] =>
  signs.filter(({ endedBy }) => endedBy === null);

/** What the worklist knows of a patient, and the items it may name. */

import type { RetestDue } from '../assessment/retest-plan.ts';
import type { WorklistReason } from '../decision/dose/proposal.ts';
import type { EpisodeStatus } from '../episode/episode-status.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Plan } from '../plan/plan.ts';
import type { Day } from '../time/day.ts';

/** From most to least pressing. */
export const worklistItemKinds = [
  'red-flag',
  'pause',
  'same-day-contact',
  'danger-passed',
  'eased-twice',
  'dose-stopped',
  'floor-reached',
  'entry-conflict',
  'ease-back',
  'resume-due',
  'awaiting-signature',
  'clock-doubtful',
  'missing-answers',
  'message',
  'reported-new',
  'event-review',
  'pre-visit-answers',
  'phase-due',
  'limit-ended',
  'routine-contact',
  'review-day',
  'break-over',
  'screening-due',
  'override-ended',
  'pressure-due',
  'retest-due',
  'baseline-due',
] as const;
export type WorklistItemKind = (typeof worklistItemKinds)[number];

/** Items that may never be snoozed. */
export const dangers: readonly WorklistItemKind[] = [
  'red-flag',
  'pause',
  'same-day-contact',
  'danger-passed',
];

/** An item with the day from which it shows. It holds facts, not words that would age. */
export interface DueItem {
  /** One item of a key per patient. */
  readonly key: string;
  readonly kind: WorklistItemKind;
  /** Instant it arose, epoch milliseconds. */
  readonly since: number;
  /** First civil day of the clinic on which it shows. */
  readonly showsFrom: Day;
  /** Instant of that day before which it does not show; left out = the whole day. */
  readonly showsAt?: number;
  readonly joint: Joint | null;
  /** Decision the item is about; answering it settles the item. */
  readonly decisionId: string | null;
  readonly facts: Readonly<Record<string, string | number>>;
  /** It falls away once the item of this key, as old as this one, was acknowledged or taken on. */
  readonly unlessHandled?: string;
  /** Somebody having acknowledged it settles it: there is nothing else to do about it. */
  readonly untilAcknowledged?: true;
  /** Who it is given to when nobody has taken it on. */
  readonly passesTo?: { readonly id: string; readonly name: string } | null;
}

/** Shows at once. */
export const always: Day = '1970-01-01';

/** What the newest proposal of a prescribed exercise says to the worklist. */
export interface WorklistProposal {
  readonly itemId: string;
  readonly exercise: string;
  readonly decisionId: string;
  readonly madeAt: number;
  readonly worklist: readonly WorklistReason[];
  readonly answered: boolean;
}

export interface ReportedNews {
  readonly at: number;
  /** What is new, in the words of the entry. */
  readonly news: readonly string[];
  readonly otherJointWorse: boolean;
}

export interface PatientState {
  /** What stands and what it asks of the clinic; the list works none of it out for itself. */
  readonly plan: Pick<Plan, 'items' | 'coming' | 'lowered' | 'asks' | 'signs' | 'pauses'>;
  readonly proposals: readonly WorklistProposal[];
  readonly unsignedSince: number | null;
  readonly conflictSince: number | null;
  readonly clockDoubtfulSince: number | null;
  /** The newest session before which something new was told, unless the screening was asked again since. */
  readonly reportedNew: ReportedNews | null;
  /** When the newest message of the patient came to which nobody has written back since. */
  readonly messageSince: number | null;
  /** Each measure that is to be taken again, with the day it is due. */
  readonly retests: readonly Pick<RetestDue, 'measure' | 'title' | 'on'>[];
  /** Day of the next review as booked. */
  readonly reviewOn: Day | null;
  /** Day the patient last answered a morning; null = never. */
  readonly lastMorning: Day | null;
  /** Day the first exercise in force was signed; null = nothing in force. */
  readonly startedOn: Day | null;
  readonly screenedOn: Day | null;
  /** Oldest occlusion pressure in use; null = no cuff in use. */
  readonly pressureMeasuredOn: Day | null;
  readonly baselines: readonly {
    readonly joint: Joint;
    /** Day a clinician last set it. */
    readonly setOn: Day;
    /** Told at a first visit, not yet set from a diary. */
    readonly provisional: boolean;
  }[];
  readonly care: CareState;
}

/** What the care around the dose tells the worklist. */
export interface CareState {
  readonly episodeStatus: EpisodeStatus;
  /** Instant from which care is closed; null while it is not. */
  readonly closedAt: number | null;
  /** Limits with a last day, in force or past it, that nobody has lifted or replaced. */
  readonly limits: readonly {
    readonly joint: Joint;
    readonly kind: string;
    readonly to: Day;
    readonly author: string;
  }[];
  /** The phase of each protocol that is in force next, once a clinician has confirmed it. */
  readonly phases: readonly {
    readonly protocolId: string;
    readonly joint: Joint;
    readonly place: number;
    /** null: the protocol has no phase yet. */
    readonly name: string | null;
    readonly from: Day;
  }[];
  /** Events after which the screening has not been asked again. */
  readonly events: readonly {
    readonly id: string;
    readonly kind: string;
    readonly day: Day;
    readonly at: number;
    /** Questions it asks again; null = the whole sheet. */
    readonly toAsk: number | null;
  }[];
  /** Answers sent before a visit that nobody has confirmed. */
  readonly answeredAt: number | null;
  /** When each urgent item passes to the covering clinician, by its key. */
  readonly passes: readonly {
    readonly key: string;
    readonly joint: Joint | null;
    readonly decisionId: string | null;
    readonly since: number;
    readonly on: Day;
    readonly at: number;
    readonly to: { readonly id: string; readonly name: string } | null;
  }[];
}

/** Days after which each thing is asked again; clinic choices of the areas concerned. */
export interface DueAfter {
  readonly missingMornings: number;
  readonly screeningDays: number;
  readonly pressureDays: number;
  readonly baselineDays: number;
}

/**
 * Danger as recorded: warning signs, the contacts they asked for, pauses and what was resumed.
 *
 * A warning sign and a pause are two things. The sign ends only by a contact that reached the patient, or
 * the person who cares for the patient; the pause ends exercise by exercise, when a named clinician resumes it.
 * Clinical wording and times are proposed, to be confirmed by a licensed clinician.
 */
import type { Contact } from '../decision/answers.ts';
import type { RedFlag } from '../decision/facts/facts.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';

/** Who the sign came from: an entry of the patient, a telephone call, a clinician, or the record itself. */
export const signSources = ['patient', 'telephone', 'clinician', 'record'] as const;
export type SignSource = (typeof signSources)[number];

export interface WarningSign {
  readonly id: string;
  readonly source: SignSource;
  /** Empty where a clinician paused for a reason of his or her own. */
  readonly flags: readonly RedFlag[];
  readonly joint: Joint | null;
  readonly urgency: Exclude<Contact, 'none'>;
  /** Epoch milliseconds. */
  readonly reportedAt: number;
  readonly reportedBy: string;
}

export const reached = ['patient', 'carer', 'nobody'] as const;
export type Reached = (typeof reached)[number];

/** One attempt to speak with the patient. It names the signs it was about: what it did not name it does not end. */
export interface ContactAttempt {
  readonly id: string;
  readonly signIds: readonly string[];
  /** Decisions that asked for a contact the same day. */
  readonly decisionIds: readonly string[];
  readonly at: number;
  readonly by: string;
  readonly reached: Reached;
  readonly found: string | null;
  readonly advised: string | null;
  readonly referredTo: string | null;
  /** When it is tried again; null once somebody was reached. */
  readonly nextAt: number | null;
}

export interface Acknowledgement {
  readonly signId: string;
  readonly at: number;
  readonly by: string;
}

export const pauseCauses = ['warning-sign', 'holiday', 'operation', 'other'] as const;

export interface Pause {
  readonly id: string;
  readonly cause: (typeof pauseCauses)[number];
  /** The sign it was made for; null for every other cause. */
  readonly signId: string | null;
  /** null = everything. */
  readonly joint: Joint | null;
  readonly reason: string;
  /** Day on which to think of resuming; it opens nothing by itself. */
  readonly until: Day | null;
  readonly at: number;
  readonly by: string;
}

interface Resumption {
  readonly pauseId: string;
  /** null = whatever the pause still held: it is over. */
  readonly itemId: string | null;
  readonly reason: string;
  readonly at: number;
  readonly by: string;
}

export interface DangerRecord {
  readonly signs: readonly WarningSign[];
  readonly acknowledgements: readonly Acknowledgement[];
  /** Oldest first. */
  readonly contacts: readonly ContactAttempt[];
  readonly pauses: readonly Pause[];
  readonly resumptions: readonly Resumption[];
}

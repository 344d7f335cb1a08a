/**
 * The stored history of one patient as the core sees it: plain values, oldest first where order
 * matters, nothing derived. The data layer maps rows to these; the engine turns them into facts.
 *
 * null always means "asked and not answered"; "not-applicable" means "not asked for this joint".
 */

import type { CareEvent } from '../episode/care-event.ts';
import type { Joint } from '../exercises/joints.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { LoadsByPlace } from '../prescribing/loads-at-place.ts';
import type { PlannedSession } from '../prescribing/programme/planned-session.ts';
import type { Day } from '../time/day.ts';
import type { MorningVia, OtherJoint } from './entry-words.ts';
import type { Limit } from './limit.ts';
import type { JointMorningAnswers } from './morning-questions.ts';

export {
  type JointMorningAnswers,
  type Swelling,
  swellings,
} from './morning-questions.ts';

export type NotApplicable = 'not-applicable';

export const stopReasons = [
  'none',
  'tired',
  'time',
  'equipment',
  'joint-pain',
  'symptom',
  'unknown',
] as const;
export type StopReason = (typeof stopReasons)[number];

export const effusions = ['zero', 'trace', '1+', '2+', '3+'] as const;
export type Effusion = (typeof effusions)[number];

/** One signed version of one prescribed exercise. */
export interface PrescriptionVersion {
  readonly id: string;
  /** Stable across versions of the same prescribed exercise. */
  readonly itemId: string;
  readonly version: number;
  readonly dose: Dose;
  /** The easier session signed together with the dose. */
  readonly badDay: Dose;
  /** Joints this exercise loads on this patient, from the demand table. */
  readonly joints: readonly Joint[];
  readonly signedAt: number;
  readonly endedAt: number | null;
  /** How this version came about. */
  readonly origin: 'clinician' | 'progress' | 'ease-back' | 'return';
}

export interface SetRecord {
  readonly itemId: string;
  readonly prescriptionId: string;
  /** From 1. */
  readonly set: number;
  /** null = the set was reached and the count not given. */
  readonly repetitions: number | null;
  readonly loadKg: number | null;
  readonly reserve: number | null;
  readonly stopReason: StopReason;
  /** Done as the easier session; absent where the phone did not say it for each set. */
  readonly easier?: boolean;
}

export interface SessionRecord {
  readonly id: string;
  /** Instant it began, epoch milliseconds. */
  readonly beganAt: number;
  /** Instant the record reached its present wording (late and amended entries have a later one). */
  readonly recordedAt: number;
  /** The civil day shown to the patient when it began. */
  readonly day: Day;
  readonly kind: 'full' | 'bad-day' | 'test';
  readonly sets: readonly SetRecord[];
  readonly redFlags: readonly string[] | null;
  readonly extraPainRelief: boolean | null;
  /** More than the prescription: extra sets or an extra session, said by the patient. null = not answered. */
  readonly didExtra: boolean | null;
  readonly joints: readonly JointSessionAnswers[];
  /** Something was new before it, or another joint was worse: a clinician looks at it, no rule reads it. */
  readonly reportedNew?: boolean;
  /** The clock of the phone was doubtful and nobody has confirmed the time: answers count as missing. */
  readonly clockDoubtful: boolean;
  /** It replaces an entry that was corrected. */
  readonly amended?: boolean;
}

export interface JointSessionAnswers {
  readonly joint: Joint;
  readonly painBefore: number | null;
  readonly painDuring: number | null;
  readonly painAfter: number | null;
  readonly painTwoHours: number | null | NotApplicable;
  /** null = not answered, as when a warning sign ended the session before it was asked. */
  readonly gaveWay: boolean | null;
}

/** The next-morning answers, or any morning diary entry. */
export interface MorningRecord {
  readonly id: string;
  readonly day: Day;
  readonly recordedAt: number;
  readonly joints: readonly JointMorningAnswers[];
  readonly redFlags: readonly string[] | null;
  readonly extraPainRelief: boolean | null;
  /** 0–10 tiredness; null = not answered, "not-applicable" = not asked. */
  readonly fatigue: number | null | NotApplicable;
  /** A joint that is not followed: worse than usual, or not; absent = not asked. No rule reads it. */
  readonly otherJoint?: OtherJoint;
  readonly clockDoubtful: boolean;
  /** It replaces an entry that was corrected. */
  readonly amended?: boolean;
  /**
   * Local minute of the day on which it was answered, 0–1439. Absent when the data layer has already
   * kept to the morning window.
   */
  readonly localMinute?: number;
  /** How the answers after the pain were given; absent in entries of earlier releases. */
  readonly via?: MorningVia;
}

/** Clinician's knee test (stroke test grades). */
export interface EffusionRecord {
  readonly joint: Joint;
  readonly day: Day;
  readonly grade: Effusion;
}

/** Values set by a clinician; never re-estimated by the engine. */
export interface Baseline {
  readonly joint: Joint;
  readonly usualPain: number | null;
  /** Top of the usual band, usualPain … usualPain + 2. */
  readonly usualPainTop: number | null;
  /** Personal ceiling 5…7. */
  readonly acceptablePainLimit: number;
  readonly usualStiffnessMinutes: number;
  readonly usualSwelling: 'none' | 'slight';
  readonly usualEffusion: 'zero' | 'trace' | '1+';
  readonly usualFatigue: number | null;
  readonly setOn: Day;
  readonly setBy: string;
  /** Set when the 14-day morning mean lay 1.5 or more under the usual pain; only a clinician clears it. */
  readonly dueForReview: boolean;
  /** Said by the patient at a first visit; the diary has not shown it yet. */
  readonly provisional?: boolean;
  /** The engine followed mornings that had become better; its age counts from the day a clinician set the value before. */
  readonly tightenedFrom?: Day;
  /** A clinician acknowledged, with a reason, that usual pain is higher than when the plan began. */
  readonly riseAcknowledged?: true;
  /** Values of an entry and of the one it corrects, the stricter of each, until a clinician has seen the new plan. */
  readonly correctedPending?: true;
  /**
   * Scatter of the mornings the usual pain was set from, for the sum chart. Set with the rest: read
   * again from the diary, a worse baseline would silence the chart. Absent = no chart.
   */
  readonly morningSpread?: { readonly standardDeviation: number; readonly values: number } | null;
}

/** With the loads of each place at which a dose may be done. */
export interface PatientRecord extends LoadsByPlace {
  readonly patientId: string;
  /** Those asked about every morning, one to six. */
  readonly followedJoints: readonly Joint[];
  readonly inflammatoryArthritis: boolean;
  readonly prescriptions: readonly PrescriptionVersion[];
  readonly sessions: readonly SessionRecord[];
  readonly mornings: readonly MorningRecord[];
  readonly effusions: readonly EffusionRecord[];
  readonly baselines: readonly Baseline[];
  /** First day of the present episode of care; absent = the whole record is one plan. */
  readonly planBeganOn?: Day;
  readonly planned: readonly PlannedSession[];
  readonly events: readonly CareEvent[];
  readonly limits: readonly Limit[];
}

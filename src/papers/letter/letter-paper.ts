/** What a letter to a GP, surgeon or rheumatologist is made from, as the record stands on the day it is written. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { DecisionWord, Today } from '#core/decision/answers.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { ClearedFinding } from '#core/episode/documents/cleared-findings.ts';
import type { DocumentChecks, DocumentLog } from '#core/episode/documents/document-facts.ts';
import type { IneligibleMethod } from '#core/episode/documents/handover.ts';
import type { WeeksOverUsual } from '#core/episode/documents/weeks-over-usual.ts';
import type { Goal } from '#core/episode/goals.ts';
import type { NotePart } from '#core/episode/visit-note.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Day } from '#core/time/day.ts';

export interface LetterExercise {
  /** Another level of the exercise, maybe, under another title. */
  readonly first: { readonly dose: Dose; readonly signedOn: Day };
  readonly now: {
    readonly dose: Dose;
    readonly signedOn: Day;
    readonly signedName: string;
    readonly isWithinSigned: boolean;
  };
  /** What is left of it today. */
  readonly today: Today;
  readonly cautions: readonly Caution[];
}

interface OpenSign {
  readonly joint: Joint | null;
  /** Empty where a clinician paused for a reason of his or her own. */
  readonly flags: readonly RedFlag[];
  readonly reportedOn: Day;
}

interface PainSpan {
  readonly low: number;
  readonly high: number;
}

export interface LetterPaper {
  readonly clinic: { readonly name: string; readonly phone: string };
  readonly patient: {
    readonly name: string;
    readonly birthDay: Day;
    readonly patientNumber: string | null;
  };
  readonly referrer: string | null;
  readonly diagnoses: readonly string[];
  readonly followed: readonly Joint[];
  /** First day of care on record; null = nothing is signed and no episode of care is open. */
  readonly since: Day | null;
  readonly log: DocumentLog | null;
  readonly outcomes: readonly OutcomeLine[];
  readonly exercises: readonly LetterExercise[];
  readonly painLimits: readonly { readonly joint: Joint; readonly limit: number | null }[];
  /** Newest decision in force of each joint. */
  readonly decisions: readonly {
    readonly joint: Joint;
    readonly decision: DecisionWord;
    /** A clinician set the dose anew after it; null = nobody did. */
    readonly setAnewOn: Day | null;
  }[];
  readonly openSigns: readonly OpenSign[];
  readonly isPaused: boolean;
  /** Methods that are not open to this patient, each with who may clear it. */
  readonly closed: readonly IneligibleMethod[];
  readonly cleared: readonly ClearedFinding[];
  /** Joints over their usual pain for weeks. */
  readonly overUsual: readonly (WeeksOverUsual & { readonly joint: Joint })[];
  /** Pain of the first and the last seven mornings logged; a joint with fewer than fourteen is left out. */
  readonly mornings: readonly { readonly joint: Joint; readonly first: PainSpan; readonly last: PainSpan }[];
  /** Days on which a decision advised less, or a pause. */
  readonly advised: { readonly eased: number; readonly paused: number };
  readonly limits: readonly LimitInForce[];
  readonly goals: readonly Goal[];
  readonly nextVisit: Day | null;
  readonly checks: DocumentChecks;
  /** Only those that were chosen for this letter, oldest first. */
  readonly notes: readonly {
    readonly on: Day;
    readonly by: string;
    readonly parts: readonly { readonly part: NotePart; readonly text: string }[];
  }[];
}

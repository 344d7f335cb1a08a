/**
 * The language of the stories. A story is what a clinician did on some days, what the patient
 * answered day by day, and the decisions a physiotherapist would expect, written down beside them.
 * Days are counted from day 0, always a Monday.
 */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import type { OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Contact, DecisionWord } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { ConsentKind } from '#core/episode/consent.ts';
import type { GoalState } from '#core/episode/goals.ts';
import type { NoteContact, NotePart } from '#core/episode/visit-note.ts';
import type { Joint, Limb, Side } from '#core/exercises/joints.ts';
import type { Method } from '#core/prescribing/methods.ts';
import type { Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import type { PrescriptionRequest } from '#core/prescribing/propose.ts';
import type { NewPatient } from '#core/record/patient-details.ts';
import type { Effusion, Swelling } from '#core/record/record.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { CareProfile } from '#data/patients/people.ts';
import type { LetterFacts } from './letter-facts.ts';
import type { NotedEvent } from './noted-event.ts';
import type { PhaseAct } from './phase-act.ts';
import type { RetestAct } from './retest-act.ts';
import type { TemplateAct } from './template-act.ts';

/** A measurement without its day: the day is that of the visit. */
type WithoutDay<M> = M extends unknown ? Omit<M, 'day'> : never;
export type Taken = WithoutDay<Measurement>;

/** One thing a clinician does at a visit. */
export type Act =
  | { readonly does: 'screen'; readonly answers: readonly ScreeningItemAnswer[] }
  | { readonly does: 'measure'; readonly taken: readonly Taken[] }
  | {
      readonly does: 'clear';
      readonly method: Method;
      readonly limb: Limb | null;
      readonly side: Side | null;
      readonly findings: readonly string[];
      readonly reason: string;
    }
  | { readonly does: 'prescribe'; readonly item: string; readonly request: PrescriptionRequest }
  /** The request is turned down; part of the reason that must be given. */
  | { readonly does: 'try'; readonly request: PrescriptionRequest; readonly refusedFor: string }
  | { readonly does: 'plan'; readonly week: Readonly<Record<string, readonly Weekday[]>> }
  | {
      readonly does: 'set-baseline';
      readonly joint: Joint;
      readonly usualPain: number;
      readonly usualPainTop: number;
      readonly usualStiffnessMinutes: number;
      readonly usualSwelling: 'none' | 'slight';
      /** Told, and not yet shown by a diary. */
      readonly provisional?: true;
      readonly reason: string;
    }
  | { readonly does: 'end'; readonly item: string; readonly reason: string }
  /** Signs every increase that waits. */
  | { readonly does: 'sign' }
  | { readonly does: 'accept'; readonly joint: Joint; readonly reason: string }
  | {
      readonly does: 'override';
      readonly joint: Joint;
      readonly decision: DecisionWord;
      readonly reason: string;
      readonly days: number;
    }
  | { readonly does: 'message'; readonly text: string }
  /** A goal in the patient's words, or how it stands. */
  | { readonly does: 'set-goal'; readonly goal: string; readonly state: GoalState }
  /** A note of that day; what is left out has no heading. */
  | ({ readonly does: 'write'; readonly contact: NoteContact } & Partial<Record<NotePart, string>>)
  /** The next review, some days ahead. */
  | { readonly does: 'book-review'; readonly days: number; readonly time: string }
  | { readonly does: 'pre-approve'; readonly item: string; readonly steps: number; readonly days: number }
  | { readonly does: 'test-effusion'; readonly joint: Joint; readonly grade: Effusion }
  /** The patient agrees, and a clinician writes it down. */
  | { readonly does: 'agree'; readonly to: readonly ConsentKind[] }
  /** A whole session with a cuff on the limb, watched. */
  | { readonly does: 'watch'; readonly limb: Limb; readonly side: Side }
  /** What the patient can do with a cuff alone: both hands release it, feeling is intact, the phone may stop. */
  | { readonly does: 'check-alone'; readonly limb: Limb; readonly side: Side }
  | {
      readonly does: 'ask-at-home';
      readonly what: 'activities' | 'own-questions';
      readonly everyDays: number;
    }
  | PhaseAct
  | RetestAct
  | TemplateAct
  | NotedEvent;

export interface Visit {
  readonly day: number;
  readonly acts: readonly Act[];
}

export const on = (day: number, ...acts: readonly Act[]): Visit => ({ day, acts });

/**
 * Seven mornings from a Monday on, the usual stiffness of that week, and its sessions:
 * `week(14, '2 3 2 2 1 2 2', 20, 'Mon 2 3 2, Thu 2 4 2')`.
 *
 * A morning is its pain score; `?` = asked and not answered, `.` = nothing was sent. A session is
 * pain before, during and after; then, where true: `easier`, `relief` (extra pain relief), `extra`
 * (more than asked), `gave-way`, `did 12/10/8` with the reason for stopping (`tired`, `joint-pain` …).
 */
export interface Week {
  readonly from: number;
  readonly mornings: string;
  readonly stiffness: number;
  readonly sessions: string;
  /** Mornings of the further joints, in their order; left out = the first joint's. */
  readonly also?: string | readonly string[] | undefined;
  /** How tired, of the whole week where it is asked. */
  readonly fatigue?: number | undefined;
}

export const week = (
  from: number,
  mornings: string,
  stiffness: number,
  sessions: string,
  also?: string | readonly string[],
  fatigue?: number,
): Week => ({ from, mornings, stiffness, sessions, also, fatigue });

/** What one morning said beside pain. */
export interface Remark {
  readonly day: number;
  readonly stiffness?: number | null;
  readonly swelling?: Swelling | null;
  readonly flare?: boolean | null;
  readonly relief?: boolean;
  /** Where it is asked. */
  readonly fatigue?: number | null;
  /** A joint that is not followed was worse. */
  readonly otherJoint?: true;
  /** Stiffness, swelling and flare of so many joints, the first ones; left out = of all. */
  readonly ofFirst?: number;
  readonly redFlags?: readonly RedFlag[] | null;
}

export const morningOf = (day: number, said: Omit<Remark, 'day'>): Remark => ({ day, ...said });

/** The same for every morning from a day to a day, both included. */
export const morningsOf = (from: number, to: number, said: Omit<Remark, 'day'>): readonly Remark[] =>
  Array.from({ length: to - from + 1 }, (_, place) => morningOf(from + place, said));

/** What stands at midday, when a physiotherapist looks. */
export interface Expected {
  readonly day: number;
  readonly joint: Joint;
  readonly decision: DecisionWord;
  readonly why: string;
  readonly contact?: Contact;
  /** What the patient follows then, by line: "3 × 15–25, 5 kg". */
  readonly inForce?: Readonly<Record<string, string>>;
  /** What waits for a signature then, by line; null = nothing waits. */
  readonly waits?: Readonly<Record<string, string | null>>;
}

/** Where the product and the physiotherapist differ. Kept, with what each says and why. */
export interface Disagreement {
  readonly day: number;
  /** What they differ on: the decision on a joint, or the dose of a line in force or waiting. */
  readonly on: 'decision' | 'in force' | 'waits';
  /** The joint or the line. */
  readonly of: string;
  readonly expected: string | null;
  readonly product: string | null;
  readonly why: string;
}

/** One round of what is asked at home, in the order of its questions; null = “I don’t know”. */
export interface AnswersAtHome {
  readonly day: number;
  readonly given: readonly OwnAnswer[];
}

export interface Story {
  /** Also the id of the patient. */
  readonly id: string;
  /** null = has no sign-in. */
  readonly email: string | null;
  readonly shows: string;
  readonly person: NewPatient;
  readonly profile: CareProfile;
  /** Days from day 0 to the demo's today; a multiple of seven. */
  readonly days: number;
  readonly visits: readonly Visit[];
  readonly weeks: readonly Week[];
  readonly remarks: readonly Remark[];
  readonly atHome?: readonly AnswersAtHome[];
  readonly expected: readonly Expected[];
  /** What another doctor has to find in the letter about this person. */
  readonly letter?: LetterFacts;
  readonly disagreements: readonly Disagreement[];
}

/** What the phone needs for one day: everything, so that the page works on with no signal. */

import type { OwnQuestion } from '#core/assessment/questionnaires/questionnaire.ts';
import type { Contact, Today } from '#core/decision/answers.ts';
import type { MorningState } from '#core/decision/morning-window.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import type { AsYesterday } from '#core/record/as-yesterday.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import type { Day } from '#core/time/day.ts';
import type { Text } from '#messages/text.ts';

/** What one entry said of the joints this morning. */
export interface MorningTold {
  readonly entryId: string;
  readonly pains: readonly { readonly joint: Joint; readonly pain: number | null }[];
}

/** A session as it was sent, and what its exercises are called, by prescription. */
export interface SentSession {
  readonly entry: SessionEntry;
  readonly titles: Readonly<Record<string, Text | string>>;
  /** Seconds of each hold, by prescription, of what was held; absent where nothing was. */
  readonly held?: Readonly<Record<string, number>>;
}

/** A question of the clinic's own, or how far an activity goes that the person chose. */
export type QuestionDue = OwnQuestion | { readonly kind: 'activity'; readonly text: string };

/** What the clinic asks now and then, and is due. */
export interface QuestionsDue {
  readonly homeQuestionsId: string;
  /** As the clinic wrote it; null = the activities the person chose. */
  readonly title: string | null;
  readonly version: number | null;
  readonly questions: readonly QuestionDue[];
  /** Answers the clinic has of it: this page goes by them, and by no copy on the phone. */
  readonly knownEntryIds: readonly string[];
}

export interface TodayView {
  readonly day: Day;
  /** Clinical minus system time; 0 outside the demo. */
  readonly clockOffset: number;
  readonly givenName: string;
  readonly clinic: {
    readonly name: string;
    /** Time zone of its day; absent on a page kept by an earlier release. */
    readonly zone?: string;
    readonly phone: string;
    readonly emergencyNumber: string;
    /** Rung when nobody answers at the clinic; the emergency number until the clinic has entered one. */
    readonly urgentNumber: string;
    readonly monitoringHours: Text;
  };
  readonly followedJoints: readonly Joint[];
  readonly asksSwelling: boolean;
  /** Followed joints that are not asked about swelling; absent on a page kept by an earlier release. */
  readonly swellingNotAsked?: readonly Joint[];
  readonly asksStiffness: boolean;
  /** How tired, each morning; this and the next are absent on a page kept by an earlier release. */
  readonly asksFatigue?: boolean;
  /** Whether a joint that is not followed is worse, each morning. */
  readonly asksOtherJoint?: boolean;
  readonly asksTwoHours: boolean;
  readonly exercises: readonly TodayExercise[];
  /** Done on a machine of the clinic and never a session at home; absent where there is none. */
  readonly atClinic?: readonly ClinicExercise[];
  /** What each answer to “pain now” leaves of today, per followed joint. */
  readonly painLookups: readonly PainLookup[];
  /** The next-morning answers of today. */
  readonly morning: {
    /** Asked, and not yet answered at an hour that counts. */
    readonly due: boolean;
    /** Answered at any hour. */
    readonly answered: boolean;
    /** Yesterday's check was not given and the clinic still takes it. */
    readonly yesterdayOpen: boolean;
    readonly canBeLate: boolean;
    /** Local hours between which an answer speaks of the morning. This and what follows is absent on a page kept by an earlier release. */
    readonly fromHour?: number;
    readonly toHour?: number;
    /** As it is at the clinic. */
    readonly state?: MorningState;
    /** Entry of the answers of today that stand. */
    readonly entryId?: string | null;
    /** Answered on two phones, and not yet said which counts. */
    readonly twice?: { readonly first: MorningTold; readonly last: MorningTold } | null;
    /** What "as yesterday" would answer; absent or null where it is not offered. */
    readonly asYesterday?: AsYesterday;
  };
  /** Last day on which warning signs may be asked by the short form; absent or null = by the whole list. */
  readonly shortSignsUntil?: Day | null;
  /** Days near today on which a session or morning answers are recorded; absent on a page kept by an earlier release. */
  readonly recordedDays?: { readonly sessions: readonly Day[]; readonly mornings: readonly Day[] };
  /** Last day on which dark urine and unusual muscle pain are asked apart; null = not now. */
  readonly urineAskedUntil: Day | null;
  /** Days for which a phone without signal may go on by this page. */
  readonly oldPageDays: number;
  /** The day a limit begins that is not in these doses; absent where none is entered, and on a page kept by an earlier release. */
  readonly changesOn?: Day | null;
  /** Pregnancy stands among what may be new before a session: by age, unless it does not apply. */
  readonly asksPregnancy: boolean;
  /** Care is on a break or over: nothing is asked. */
  readonly asksNothing: boolean;
  /** Questions before a visit wait for an answer. */
  readonly questionsWait: boolean;
  /** What the clinic asks now and then; absent where nothing of it is due. */
  readonly questionsDue?: readonly QuestionsDue[];
  /** The next appointment as booked; null or absent where none is. */
  readonly appointment?: {
    readonly day: Day;
    /** HH:MM at the clinic. */
    readonly time: string | null;
    readonly place: string | null;
  } | null;
  /** The session of today as it stands, while the patient may put it right; absent on a page kept by an earlier release. */
  readonly sent?: SentSession | null;
  /** The session of today has already been sent. */
  readonly sessionSent: boolean;
  /** Most urgent contact that anything in force asks for. */
  readonly contact: Contact;
  /**
   * Answers whose warning signs this page already speaks of; one that is not among them stops the phone by
   * itself. Absent on a page kept by an earlier release.
   */
  readonly knownEntryIds?: readonly string[];
  /** A warning sign is open: nothing is begun or gone on with. */
  readonly isStopped: boolean;
  /** How warning signs and pauses stand; empty = none. */
  readonly danger: readonly Text[];
  /** Plain sentences: what changed since last time, each with the reason from the rule that changed it. */
  readonly changes: readonly Text[];
  /** What changed without a rule holding anything back; absent on a page kept by an earlier release. */
  readonly changesWithoutWhy?: readonly Text[];
  /** What a rule held where it was, with its reason; absent on a page kept by an earlier release. */
  readonly unchanged?: readonly Text[];
  readonly messages: readonly {
    readonly text: Text;
    readonly sentName: string;
    readonly sentAt: number;
    /** Sent before the plan of today stood: it may speak of another one. */
    readonly isOfEarlierPlan?: boolean;
  }[];
}

/** What the phone says of it and does not offer. */
type ClinicExercise = Pick<TodayExercise, 'itemId' | 'title' | 'dose' | 'badDay' | 'cautions' | 'today'>;

export interface TodayExercise {
  readonly prescriptionId: string;
  readonly itemId: string;
  readonly title: Text;
  /** What to do, in order. */
  readonly instructions: readonly Text[];
  readonly joints: readonly Joint[];
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly cautions: readonly {
    readonly id: string;
    readonly text: Text;
    /** A limit on the joint: it bounds today's dose and is never folded away. */
    readonly isLimit?: boolean;
  }[];
  /** Stands on the programme today; true as well when no programme has been written. */
  readonly planned: boolean;
  /** Weekdays on which it stands; null = every day, where no programme has been written and no cuff is used alone. */
  readonly weekdays: readonly Weekday[] | null;
  /** First done, or with an increased dose, the next time it is done. */
  readonly isNewDose: boolean;
  /** Done in three sessions or more: how to do it is folded. Absent on a page kept by an earlier release. */
  readonly isFamiliar?: boolean;
  /** What the standing decisions leave of it today. */
  readonly today: Today;
  readonly signedName: string;
}

/** What the plan on paper is made from: signed versions as the plan leaves them on the day of printing. */
import type { Today } from '#core/decision/answers.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Day } from '#core/time/day.ts';
import type { Text } from '#messages/text.ts';

export interface PlanPaperExercise {
  readonly exerciseId: string;
  readonly title: Text;
  /** Within every limit. */
  readonly dose: Dose;
  readonly easierSession: Dose;
  readonly today: Today;
  /** Days of the weeks on which it stands; null = the patient chooses them. */
  readonly days: readonly Day[] | null;
  readonly cautions: readonly Text[];
  readonly version: number;
  readonly signedName: string;
  readonly signedOn: Day;
  /** It came by itself within limits that were signed by that name. */
  readonly isWithinSigned: boolean;
}

export interface PlanPaper {
  readonly clinic: {
    readonly name: string;
    readonly phone: string;
    readonly urgentNumber: string;
    readonly emergencyNumber: string;
  };
  readonly patient: { readonly name: string; readonly birthDay: Day };
  /** Day of each Monday. */
  readonly weeks: readonly Day[];
  /** The last day before a limit begins that these doses do not know; null where none is entered. */
  readonly until: Day | null;
  /** Care is on a break or over. */
  readonly isOff: boolean;
  /** How warning signs and pauses stand. */
  readonly danger: readonly Text[];
  readonly exercises: readonly PlanPaperExercise[];
  /** Joints that are followed; null = no limit for pain is known. */
  readonly joints: readonly { readonly joint: Joint; readonly acceptablePainLimit: number | null }[];
}

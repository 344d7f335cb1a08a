/** What the note to the rheumatology team is made from: rows of the last eight weeks, and nothing estimated. */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { FlareCourse } from '#core/episode/documents/flare-course.ts';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { MorningRecord } from '#core/record/record.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';
import type { HandoverPaper } from '../handover/handover-paper.ts';

export interface FlareNotePaper {
  readonly clinic: HandoverPaper['clinic'];
  readonly patient: { readonly name: string; readonly birthDay: Day; readonly patientNumber: string | null };
  readonly diagnoses: readonly string[];
  readonly isInflammatory: boolean;
  /** First day that is looked at. */
  readonly since: Day;
  readonly joints: readonly {
    readonly joint: Joint;
    /** null: none was reported. */
    readonly flare: FlareCourse | null;
  }[];
  /** The last mornings, oldest first. */
  readonly mornings: readonly Pick<MorningRecord, 'day' | 'joints' | 'fatigue' | 'otherJoint'>[];
  /** The newest, however old. */
  readonly jointCounts: { readonly tender: number; readonly swollen: number; readonly day: Day } | null;
  /** Medicines as the screening has them: what was answered, and when. */
  readonly medicines: readonly { readonly answer: ScreeningItemAnswer; readonly day: Day }[];
  /** Mornings with more pain relief than usual, without, and with no answer. */
  readonly relief: { readonly more: number; readonly usual: number; readonly unanswered: number };
  readonly events: readonly Pick<
    RecordedEvent,
    'day' | 'kind' | 'joint' | 'remark' | 'medicine' | 'lastDay' | 'courseForm'
  >[];
  readonly signs: readonly {
    readonly on: Day;
    readonly joint: Joint | null;
    readonly flags: readonly RedFlag[];
  }[];
  /** Doses signed in that time. */
  readonly signed: readonly { readonly on: Day; readonly dose: Dose }[];
  /** Days on which less, or a pause, was advised. */
  readonly eased: readonly {
    readonly joint: Joint;
    readonly decision: Extract<DecisionWord, 'ease-back' | 'pause'>;
    readonly first: Day;
    readonly last: Day;
    readonly days: number;
  }[];
  readonly inForce: HandoverPaper['inForce'];
  readonly cautions: HandoverPaper['cautions'];
}

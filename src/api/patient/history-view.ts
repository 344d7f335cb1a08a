/** How it has gone, for the patient: own work and own answers, with what was decided and why in plain words. */

import type { Joint } from '#core/exercises/joints.ts';
import type { OtherJoint } from '#core/record/entry-words.ts';
import type { JointMorningAnswers } from '#core/record/morning-questions.ts';
import type { MorningRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import type { Text } from '#messages/text.ts';

export interface HistoryDay {
  readonly day: Day;
  readonly sessions: readonly {
    readonly kind: 'full' | 'bad-day' | 'test';
    readonly exercises: readonly {
      readonly exerciseId: string;
      readonly title: Text;
      /** What is counted are holds; absent = repetitions. */
      readonly isHeld?: true;
      readonly sets: readonly { readonly repetitions: number | null; readonly loadKg: number | null }[];
    }[];
    readonly joints: readonly {
      readonly joint: Joint;
      readonly painBefore: number | null;
      readonly painDuring: number | null;
      readonly painAfter: number | null;
    }[];
  }[];
  readonly mornings: readonly {
    readonly joints: readonly JointMorningAnswers[];
    readonly fatigue: MorningRecord['fatigue'];
    /** Absent = not asked. */
    readonly otherJoint?: OtherJoint;
  }[];
  readonly decisions: readonly {
    readonly joint: Joint;
    /** What it means. */
    readonly text: Text;
    readonly because: readonly Text[];
  }[];
}

export interface HistoryView {
  readonly today: Day;
  /** Newest first; days with nothing are left out. */
  readonly days: readonly HistoryDay[];
  /** Day before which more is on record, and is asked for by it; null = these are the first. */
  readonly earlierThan: Day | null;
}

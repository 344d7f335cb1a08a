/** What the patient's own copy of the record is made from: all of it as corrected, oldest first. */
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import type { DecisionWord } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { CareEvent } from '#core/episode/care-event.ts';
import type { ConsentKind, ConsentRow } from '#core/episode/consent.ts';
import type { EpisodeChange } from '#core/episode/episode.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { NutritionAdvice } from '#core/nutrition/picture/nutrition-advice.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Limit } from '#core/record/limit.ts';
import type { Baseline, MorningRecord, SessionRecord } from '#core/record/record.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import type { Day } from '#core/time/day.ts';
import type { PlanPaper } from '../plan/plan-paper.ts';

export interface RecordVersion {
  readonly id: string;
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly cautions: readonly Caution[];
  readonly signedName: string;
  readonly signedOn: Day;
  readonly endedOn: Day | null;
}

/** Something somebody wrote, with who and when. */
export interface Written {
  readonly on: Day;
  readonly by: string;
  readonly text: string;
}

export interface RecordPaper {
  readonly clinic: PlanPaper['clinic'];
  readonly patient: PlanPaper['patient'] & {
    readonly patientNumber: string | null;
    readonly phone: string | null;
  };
  readonly diagnoses: readonly string[];
  readonly goals: readonly string[];
  readonly changes: readonly Pick<EpisodeChange, 'to' | 'on' | 'reason'>[];
  readonly versions: readonly RecordVersion[];
  readonly baselines: readonly Baseline[];
  readonly sessions: readonly SessionRecord[];
  readonly mornings: readonly MorningRecord[];
  readonly decisions: readonly {
    readonly joint: Joint;
    readonly decision: DecisionWord;
    readonly day: Day;
  }[];
  readonly signs: readonly { readonly on: Day; readonly flags: readonly RedFlag[] }[];
  /** Each thing measured, with every value. */
  readonly measured: readonly Pick<OutcomeLine, 'title' | 'readings'>[];
  readonly screenings: readonly { readonly day: Day; readonly answers: readonly ScreeningItemAnswer[] }[];
  readonly consents: readonly (Pick<ConsentRow, 'act'> & { readonly kind: ConsentKind; readonly on: Day })[];
  readonly limits: readonly Limit[];
  readonly events: readonly (Pick<CareEvent, 'day' | 'kind'> & { readonly remark: string | null })[];
  /** What was shown of protein and energy, oldest first; null stands for a withdrawal. */
  readonly nutrition: readonly {
    readonly on: Day;
    readonly by: string;
    readonly advice: NutritionAdvice | null;
  }[];
  /** The newest is still shown: nothing has closed it since. */
  readonly isNutritionShown: boolean;
  readonly notes: readonly Written[];
  readonly messages: readonly Written[];
}

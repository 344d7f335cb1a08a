/** What the page for the colleague is made from, as the record stands on the day it is printed. */

import type { PauseState } from '#core/danger/danger-state.ts';
import type { DecisionWord, Reason, Today } from '#core/decision/answers.ts';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import type {
  IneligibleMethod,
  OpenDanger,
  OverrideLine,
  PauseLine,
} from '#core/episode/documents/handover.ts';
import type { EpisodeStatus } from '#core/episode/episode-status.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Day } from '#core/time/day.ts';
import type { RungClinic } from '../sheet/signs-for-colleagues.ts';

interface NamedDose {
  readonly dose: Dose;
  readonly signedName: string | null;
}

export interface HandoverPaper {
  readonly clinic: RungClinic & { readonly name: string };
  readonly patient: { readonly name: string; readonly birthDay: Day };
  readonly episodeStatus: EpisodeStatus;
  readonly dangers: readonly (OpenDanger & {
    readonly since: Day;
    readonly acknowledgedBy: string | null;
    readonly assignedName: string | null;
  })[];
  readonly coveringClinician: { readonly name: string } | null;
  readonly clinicianPauses: readonly (Pick<PauseState['pause'], 'joint' | 'cause' | 'by' | 'reason'> & {
    readonly since: Day;
  })[];
  readonly pauses: readonly (Omit<PauseLine, 'since'> & { readonly since: Day })[];
  readonly limits: readonly LimitInForce[];
  readonly closed: readonly IneligibleMethod[];
  readonly decisions: readonly {
    readonly joint: Joint;
    readonly decision: DecisionWord;
    readonly day: Day;
    readonly reasons: readonly Pick<Reason, 'rule' | 'threshold'>[];
    readonly answeredName: string | null;
  }[];
  readonly overrides: readonly OverrideLine[];
  readonly unsigned: readonly NamedDose[];
  readonly inForce: readonly (NamedDose & { readonly today: Today; readonly easierSession: Dose })[];
  readonly cautions: readonly Caution[];
}

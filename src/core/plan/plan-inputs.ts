/** What the plan is worked out from. */
import type { DangerRecord } from '../danger/danger.ts';
import type { ClinicianAnswer, MadeDecision } from '../decision/decisions-in-force.ts';
import type { Moment } from '../decision/facts/judged-session.ts';
import type { CareAround } from '../episode/care-eligibility.ts';
import type { Joint } from '../exercises/joints.ts';
import type { LoadsByPlace } from '../prescribing/loads-at-place.ts';
import type { Limit } from '../record/limit.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Day } from '../time/day.ts';
import type { Screened } from './findings.ts';

export interface PlanInputs extends LoadsByPlace {
  /** The signed version of each prescribed exercise that is in force. */
  readonly versions: readonly PrescriptionVersion[];
  /** What was last signed of each exercise whose dose was eased back by itself since. */
  readonly written: readonly PrescriptionVersion[];
  /** Oldest first; every pause must be among them, however old. */
  readonly decisions: readonly MadeDecision[];
  readonly answers: readonly ClinicianAnswer[];
  readonly danger: DangerRecord;
  readonly limits: readonly Limit[];
  readonly care: CareAround;
  readonly screened: Screened;
  /** Something new was told before a session of this day. */
  readonly newsToday: boolean;
  /** Instant at which the last session that loaded each joint began, of the last days. */
  readonly lastLoadedAt: ReadonlyMap<Joint, number>;
  /** Newest day on which a set was done; null = never. */
  readonly lastSessionOn: Day | null;
  readonly settings: SettingValues;
  readonly at: Moment;
  /** The person's other records: what they hold against an exercise holds here as well; they allow nothing. */
  readonly beside?: readonly Beside[];
}

type Beside = Pick<
  PlanInputs,
  | 'decisions'
  | 'answers'
  | 'danger'
  | 'limits'
  | 'screened'
  | 'care'
  | 'newsToday'
  | 'lastLoadedAt'
  | 'lastSessionOn'
>;

/** A caution as the patient is to be told it: what it is known by and what it names, never words. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Limit, WeightBearing } from '#core/record/limit.ts';
import type { PlainCautionId, UncheckedThing } from './ids.ts';

/** What a limit can bound. "none" lifts one and is never told; a method that is closed is not in her plan. */
export type LimitedBy =
  | Exclude<Limit['kind'], 'none' | 'methods'>
  | 'load-limit-kg'
  /** Of an exercise that is done without a weight: the figure is no load to add. */
  | 'load-limit-kg-none'
  | `bears-${Exclude<WeightBearing, 'full'>}`;

export interface BloodPressureNumbers {
  readonly reviewSystolic: number;
  readonly reviewDiastolic: number;
  readonly stopSystolic: number;
  readonly stopDiastolic: number;
}

export type PatientCaution =
  | { readonly key: PlainCautionId }
  /** Resting blood pressure in mmHg from which she rings first, and from which there is no session. */
  | ({ readonly key: 'blood-pressure-numbers' } & BloodPressureNumbers)
  | { readonly key: 'not-checked'; readonly things: readonly UncheckedThing[] }
  | {
      readonly key: 'limit';
      readonly kind: LimitedBy;
      readonly joint: Joint;
      /** Name of whoever set it. */
      readonly author: string;
      /** Of partial weight-bearing the most the limb may take, of a load limit with a figure the most to handle. */
      readonly kg?: number;
    };

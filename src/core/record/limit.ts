/** What a clinician bounded for a joint, from one day to another. */
import type { Joint } from '../exercises/joints.ts';
import type { Movement } from '../exercises/movements.ts';
import type { Method } from '../prescribing/methods.ts';
import type { Day } from '../time/day.ts';

/** How much weight the limb may take, from the strictest (common practice, no source). */
export const weightBearings = ['none', 'touch', 'partial', 'as-tolerated', 'full'] as const;
export type WeightBearing = (typeof weightBearings)[number];

export interface Limit {
  readonly joint: Joint;
  readonly kind: 'weight-bearing' | 'range' | 'load-limit' | 'no-impact' | 'methods' | 'none';
  readonly limitKg: number | null;
  /** Of weight-bearing: how much, and of partial the most in kg; left out = not graded, which closes as "none". */
  readonly weightBearing?: Exclude<WeightBearing, 'full'>;
  readonly bearKg?: number | null;
  /** Of methods: those that are not used for now. */
  readonly withoutMethods?: readonly Method[];
  /** Of a range: degrees from neutral that are allowed, all three or none; left out or null = not named. */
  readonly movement?: Movement | null;
  readonly fromDegrees?: number | null;
  readonly toDegrees?: number | null;
  readonly from: Day;
  /** Last day it holds; null = until lifted. */
  readonly to: Day | null;
  readonly author: string;
  /** Of a phase of a protocol: an entry of kind "none" ends none of it. */
  readonly ofPhase?: true;
  /** Day a clinician lifted it, with a reason; from then on it no longer binds. */
  readonly liftedOn?: Day | null;
}

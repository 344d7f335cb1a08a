/** What a clinician bounded for a joint, from one day to another. */
import type { Joint } from '../exercises/joints.ts';
import type { Movement } from '../exercises/movements.ts';
import type { Day } from '../time/day.ts';

export interface Limit {
  readonly joint: Joint;
  readonly kind: 'weight-bearing' | 'range' | 'load-limit' | 'no-impact' | 'none';
  readonly limitKg: number | null;
  /** Of a range: degrees from neutral that are allowed, all three or none; left out or null = not named. */
  readonly movement?: Movement | null;
  readonly fromDegrees?: number | null;
  readonly toDegrees?: number | null;
  readonly from: Day;
  /** Last day it holds; null = until lifted. */
  readonly to: Day | null;
  readonly author: string;
  /** Day a clinician lifted it, with a reason; from then on it no longer binds. */
  readonly liftedOn?: Day | null;
}

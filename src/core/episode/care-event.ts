import type { Joint } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';

/** Something that happened to the patient, as a clinician wrote it down. */
export interface CareEvent {
  readonly day: Day;
  readonly kind: 'medicine-change' | 'joint-injection' | 'surgery' | 'fall' | 'illness';
  readonly joint: Joint | null;
}

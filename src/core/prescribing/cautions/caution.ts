/** A caution that goes with a prescription version; can be added to, never removed. */
import type { PatientCaution } from './patient-caution.ts';

export interface Caution {
  readonly id: string;
  /** For the clinician. */
  readonly text: string;
  /** For the patient: what the sentence is known by. */
  readonly patient: PatientCaution;
  /** What brought it: a screening item, a method, a joint, a medicine class, an exercise. */
  readonly from: string;
  /** Source key, "common-practice" or "clinic". */
  readonly support: string;
}

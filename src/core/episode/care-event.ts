import type { Joint } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';

/** The first four are treatment; the rest are what happened beside it. */
export const treatmentKinds = [
  'medicine-change',
  'missed-dose',
  'steroid-course',
  'joint-injection',
] as const;
export const careEventKinds = [...treatmentKinds, 'surgery', 'fall', 'illness'] as const;

export type TreatmentKind = (typeof treatmentKinds)[number];

/** Something that happened to the patient, as a clinician wrote it down. */
export interface CareEvent {
  readonly day: Day;
  readonly kind: (typeof careEventKinds)[number];
  readonly joint: Joint | null;
  /** Last day of a course of steroid, as planned or as it was; absent or null for everything else. */
  readonly lastDay?: Day | null;
}

/** How a course of steroid is taken. */
export const courseForms = ['same-dose', 'taper'] as const;
export type CourseForm = (typeof courseForms)[number];

export const isTreatment = <E extends Pick<CareEvent, 'kind'>>(
  event: E,
): event is E & { readonly kind: TreatmentKind } => treatmentKinds.some((kind) => kind === event.kind);

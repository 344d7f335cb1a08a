/** Every measure, in the order in which they stand on a page. What is not here cannot be recorded. */
import { ankleBrachialIndex } from './ankle-brachial-index.ts';
import { bloodPressure } from './blood-pressure.ts';
import { bodyFat } from './body-fat.ts';
import { bodyMass } from './body-mass.ts';
import { chairStand } from './chair-stand-30s.ts';
import { grip } from './grip.ts';
import { handSpan } from './hand-span.ts';
import { isometricForce } from './isometric-force.ts';
import { jointCounts } from './joint-counts.ts';
import { limbCircumference } from './limb-circumference.ts';
import { limbOcclusionPressure } from './limb-occlusion-pressure.ts';
import type { AnyMeasure } from './measure.ts';
import { patientChosenActivity } from './patient-chosen-activity.ts';
import { pinch } from './pinch.ts';
import { repetitionsToFailure } from './repetitions-to-failure.ts';
import { stature } from './stature.ts';
import { timedUpAndGo } from './timed-up-and-go.ts';

export const measures = [
  bodyMass,
  stature,
  bodyFat,
  bloodPressure,
  limbCircumference,
  limbOcclusionPressure,
  ankleBrachialIndex,
  repetitionsToFailure,
  chairStand,
  timedUpAndGo,
  grip,
  pinch,
  handSpan,
  isometricForce,
  jointCounts,
  patientChosenActivity,
] as const;

/** The measure of a row. Undefined for a kind that is not on the list. */
const byKind: ReadonlyMap<string, AnyMeasure> = new Map(measures.map((one) => [one.kind, one]));

export const measureOf = (kind: (typeof measures)[number]['kind']): AnyMeasure => byKind.get(kind)!;

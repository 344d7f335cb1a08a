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
import { rangeOfMovement } from './range-of-movement.ts';
import { repetitionsToFailure } from './repetitions-to-failure.ts';
import { diseaseActivityScore } from './scores/disease-activity-score.ts';
import { kneeHipScore } from './scores/knee-hip-score.ts';
import { painFunctionGlobal } from './scores/pain-function-global.ts';
import { stature } from './stature.ts';
import { fastWalk } from './timed-tests/fast-walk-40m.ts';
import { fiveTimesSitToStand } from './timed-tests/five-times-sit-to-stand.ts';
import { sixMinuteWalk } from './timed-tests/six-minute-walk.ts';
import { stairClimb } from './timed-tests/stair-climb.ts';
import { usualPaceWalk } from './timed-tests/usual-pace-walk.ts';
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
  fiveTimesSitToStand,
  timedUpAndGo,
  usualPaceWalk,
  fastWalk,
  sixMinuteWalk,
  stairClimb,
  grip,
  pinch,
  handSpan,
  isometricForce,
  rangeOfMovement,
  jointCounts,
  diseaseActivityScore,
  painFunctionGlobal,
  kneeHipScore,
  patientChosenActivity,
] as const;

/** The measure of a row. Undefined for a kind that is not on the list. */
const byKind: ReadonlyMap<string, AnyMeasure> = new Map(measures.map((one) => [one.kind, one]));

export const measureOf = (kind: (typeof measures)[number]['kind']): AnyMeasure => byKind.get(kind)!;

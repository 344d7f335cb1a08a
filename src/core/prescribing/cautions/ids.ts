/** What a caution is known by; stored with a prescription, so an id never changes. */
import type { JointName } from '#core/exercises/joints.ts';
import type { ScreeningItemId } from '#core/screening/items.ts';

/** Carried by every prescription. */
export const alwaysCautionIds = ['clinician-decides', 'stop-signs', 'same-day-signs'] as const;
export type AlwaysCautionId = (typeof alwaysCautionIds)[number];

/** Brought by a method, a cuff or a wrap. */
export const methodCautionIds = [
  'variation-step',
  'near-failure',
  'breathe-near-failure',
  'occlusion-arms-legs-one-at-a-time',
  'occlusion-pulse-and-colour',
  'occlusion-release',
  'occlusion-after',
  'occlusion-time',
  'occlusion-evidence',
  'wrap-pressure-unknown',
  'occlusion-alone',
  'cuff-pressure-belongs-to-this-cuff',
] as const;
export type MethodCautionId = (typeof methodCautionIds)[number];

/** Brought by an exercise. */
export const exerciseCautionIds = [
  'steady-seat',
  'fall-risk-standing',
  'wrist-load',
  'surface-slip',
  'breath-holding',
  'floor-transfer',
  'band-snap',
  'anchor-strength',
  'overhead-arm',
  'weight-drop',
  'hip-bend-limit',
  'knee-end-range',
  'knee-bend-pain',
  'grip-strain',
  'low-back-bend',
  'low-back-arch',
  'side-lying-hip',
  'front-lying',
  'toe-joint',
  'kneeling',
  'head-low',
  'hand-joint-pain',
  'thumb-pinch',
  'slow-press',
  'machine-set-up',
  'neck-pressure',
] as const;
export type ExerciseCautionId = (typeof exerciseCautionIds)[number];

/** Classes of medicine that bring a caution; each is also a detail of the questions about medicines. */
export const cautionedMedicineIds = [
  'blood-thinner',
  'hormone-pill-or-patch',
  'testosterone',
  'blood-pressure-tablet',
  'insulin-or-sulfonylurea',
  'long-term-steroid',
  'statin',
  'colchicine',
  'jak-inhibitor',
  'biologic',
  'recent-quinolone',
] as const;
export type CautionedMedicineId = (typeof cautionedMedicineIds)[number];
export type MedicineCautionId = `medicine-${CautionedMedicineId | 'not-said'}`;

/** What nobody has checked; said by the caution "not-checked". */
export const uncheckedThings = [
  'clots',
  'heart-under-effort',
  'bone-strength',
  'movement-at-home',
  'health-questions',
  'blood-pressure',
  'vessels-by-imaging',
  'ankle-brachial-index',
  'wrap-pressure',
] as const;
export type UncheckedThing = (typeof uncheckedThings)[number];

/** What is looked at before, during and after work with a cuff. */
export const occlusionCheckIds = [
  're-ask',
  'skin-before',
  'pulse-before',
  'pain-before-exercise',
  'pulse-during',
  'colour-during',
  'refill-during',
  'three-scores',
  'release-between',
  'colour-after',
  'mornings-after',
] as const;
export type OcclusionCheckId = (typeof occlusionCheckIds)[number];

/** Every caution that reads the same wherever it stands. */
export type PlainCautionId =
  | AlwaysCautionId
  | MethodCautionId
  | ExerciseCautionId
  | `joint-${JointName}`
  | `screening-${ScreeningItemId}`
  | MedicineCautionId;

/**
 * Starting points for a first prescription, our own: an exercise, a method and the numbers most often
 * asked for here. Every number is the clinic's or the method's own default and may be changed before
 * anything is proposed; a template decides nothing and carries no evidence of its own.
 */
import type { JointName } from '../exercises/joints.ts';
import type { LowLoadRequest, VariationRequest } from './dose-request.ts';

export interface PrescriptionTemplate {
  readonly id: string;
  readonly title: string;
  /** The joint it is thought for. */
  readonly joint: JointName;
  readonly request: Omit<LowLoadRequest, 'side' | 'knownOneRepMaxKg'> | Omit<VariationRequest, 'side'>;
  readonly weekdays: readonly (1 | 2 | 3 | 4 | 5 | 6 | 7)[];
}

const start =
  (method: 'low-load' | 'variation') =>
  (id: string, title: string, joint: JointName, exerciseId: string): PrescriptionTemplate => ({
    id,
    title,
    joint,
    request: { method, exerciseId },
    weekdays: [1, 3, 5],
  });
const lowLoad = start('low-load');
/** Of a hand little is lifted: putty, a ring, or a press that is held. */
const variation = start('variation');

export const prescriptionTemplates: readonly PrescriptionTemplate[] = [
  lowLoad('knee-front', 'Knee: front of the thigh, sitting', 'knee', 'knee-extension-seated'),
  lowLoad('knee-back', 'Knee: back of the thigh, standing', 'knee', 'knee-bend-standing'),
  lowLoad('hip-front', 'Hip: raise the straight leg, lying', 'hip', 'straight-leg-raise'),
  lowLoad('hip-side', 'Hip: raise the leg to the side, lying', 'hip', 'side-lying-hip-abduction'),
  lowLoad('calf', 'Ankle: raise the heels, sitting', 'ankle', 'heel-raise-seated'),
  lowLoad('upper-arm', 'Elbow: bend it, sitting', 'elbow', 'curl-seated'),
  lowLoad('shoulder-front', 'Shoulder: raise the bent arm to the front', 'shoulder', 'front-arm-raise-bent'),
  variation('thumb-base', 'Thumb base: press the thumb out, held', 'thumb-base', 'thumb-out-hold'),
  variation('thumb-pinch', 'Thumb base: round O, held', 'thumb-base', 'tip-pinch-hold'),
  variation('fingers-close', 'Fingers: squeeze putty', 'finger-joint', 'putty-squeeze'),
  variation(
    'fingers-open',
    'Fingers: straighten them against a ring',
    'finger-joint',
    'finger-straighten-ring',
  ),
  lowLoad('wrist', 'Wrist: bend it up, forearm on a table', 'wrist', 'wrist-bend-up'),
];

/**
 * Starting points for a first prescription, our own: an exercise, a method and the numbers most often
 * asked for here. Every number is the clinic's or the method's own default and may be changed before
 * anything is proposed; a template decides nothing and carries no evidence of its own.
 */
import type { JointName } from '../exercises/joints.ts';
import type { LowLoadRequest } from './dose-request.ts';

export interface PrescriptionTemplate {
  readonly id: string;
  readonly title: string;
  /** The joint it is thought for. */
  readonly joint: JointName;
  readonly request: Omit<LowLoadRequest, 'side' | 'knownOneRepMaxKg'>;
  readonly weekdays: readonly (1 | 2 | 3 | 4 | 5 | 6 | 7)[];
}

const lowLoad = (
  id: string,
  title: string,
  joint: JointName,
  exerciseId: string,
  over: Partial<PrescriptionTemplate['request']> = {},
): PrescriptionTemplate => ({
  id,
  title,
  joint,
  request: { method: 'low-load', exerciseId, ...over },
  weekdays: [1, 3, 5],
});

export const prescriptionTemplates: readonly PrescriptionTemplate[] = [
  lowLoad('knee-front', 'Knee: front of the thigh, sitting', 'knee', 'knee-extension-seated'),
  lowLoad('knee-back', 'Knee: back of the thigh, standing', 'knee', 'knee-bend-standing'),
  lowLoad('hip-front', 'Hip: raise the straight leg, lying', 'hip', 'straight-leg-raise'),
  lowLoad('hip-side', 'Hip: raise the leg to the side, lying', 'hip', 'side-lying-hip-abduction'),
  lowLoad('calf', 'Ankle: raise the heels, sitting', 'ankle', 'heel-raise-seated'),
  lowLoad('upper-arm', 'Elbow: bend it, sitting', 'elbow', 'curl-seated'),
  lowLoad('shoulder-front', 'Shoulder: raise the bent arm to the front', 'shoulder', 'front-arm-raise-bent'),
  lowLoad('wrist', 'Wrist: bend it up, forearm on a table', 'wrist', 'wrist-bend-up'),
];

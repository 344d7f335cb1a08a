import type { JointDemand } from './exercise.ts';
import type { JointName } from './joints.ts';

/** The joint the exercise is about. */
export const main = (joint: JointName, direction: string): JointDemand => ({
  joint,
  direction,
  share: 'main',
});

/** A joint of the worked limb, or the midline, loaded on the way. */
export const carried = (joint: JointName, direction: string): JointDemand => ({
  joint,
  direction,
  share: 'carried',
});

/** A joint of the limb that only holds the body up, such as the standing leg. */
export const held = (joint: JointName, direction: string): JointDemand => ({
  joint,
  direction,
  share: 'carried',
  of: 'other',
});

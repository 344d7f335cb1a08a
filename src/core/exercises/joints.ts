/** Joints the tool follows, always with a side. */
const jointNames = [
  'shoulder',
  'elbow',
  'wrist',
  'hand',
  'thumb-base',
  'finger-joint',
  'hip',
  'knee',
  'ankle',
  'foot',
  'neck',
  'low-back',
] as const;
export type JointName = (typeof jointNames)[number];

export const sides = ['left', 'right'] as const;
export type Side = (typeof sides)[number];

/** Joints of the midline carry no side. */
export type Joint = `${Side}-${Exclude<JointName, 'neck' | 'low-back'>}` | 'neck' | 'low-back';

export const limbs = ['arm', 'leg'] as const;
export type Limb = (typeof limbs)[number];

export const joints: readonly Joint[] = jointNames.flatMap((name) =>
  name === 'neck' || name === 'low-back' ? [name] : sides.map((side) => `${side}-${name}` as Joint),
);

export const jointNameOf = (joint: Joint): JointName => joint.replace(/^(left|right)-/, '') as JointName;

export const sideOf = (joint: Joint): Side | null =>
  joint.startsWith('left-') ? 'left' : joint.startsWith('right-') ? 'right' : null;

const ofLeg: readonly JointName[] = ['hip', 'knee', 'ankle', 'foot'];

/** null for the midline. */
export const limbOfJoint = (joint: Joint): Limb | null =>
  sideOf(joint) === null ? null : ofLeg.includes(jointNameOf(joint)) ? 'leg' : 'arm';

/** The joints of one name that an exercise done on the given side loads. */
export const jointsOn = (name: JointName, side: Side | 'both'): readonly Joint[] =>
  name === 'neck' || name === 'low-back'
    ? [name]
    : side === 'both'
      ? [`left-${name}`, `right-${name}`]
      : [`${side}-${name}`];

/** Joints of the hand that are followed by themselves; "hand" is all of it together. */
const partsOfHand: readonly JointName[] = ['thumb-base', 'finger-joint'];

/** What is loaded with a joint: the hand with each of its joints, and a joint of it with the hand. */
export const loadedWith = (name: JointName): readonly JointName[] =>
  name === 'hand' ? ['hand', ...partsOfHand] : partsOfHand.includes(name) ? [name, 'hand'] : [name];

/** Where exercises begin, and what many of them share. */
import { lengths, type Segment } from '../body/lengths.ts';
import type { Arm, Leg, Pose } from '../body/pose.ts';
import type { Prop } from './figure.ts';
import { chair, chairBack, floor, lines } from './props.ts';

export const leg: readonly Segment[] = ['thigh', 'shank', 'foot'];
export const arm: readonly Segment[] = ['upper-arm', 'forearm', 'hand'];

const hanging: Arm = { shoulder: 2, elbow: 10 };
const straight: Leg = {};
export const sole = lengths.ankleHeight;
export const hipHeight = sole + lengths.thigh + lengths.shank;

export const standing: Pose = { leg: straight, arm: hanging, anchor: ['ankle', [0, sole]] };
export const floorUnder: Prop = floor(-34, 46);

/** Holding the back of a chair in front. */
export const chairInFront = chairBack(32, 80);
export const atChair: Pose = { ...standing, arm: { handAt: [29, 82] } };
/** A rail so far in front that a leg can be lifted before it. */
export const railInFront: Prop = lines(
  [
    [57, 0],
    [57, 101],
  ],
  [
    [50, 101],
    [64, 101],
  ],
);
export const atRail: Pose = { ...standing, arm: { handAt: [50, 102] } };

/** Sitting with level thighs; the hip joint lies a thigh's half over the seat. */
export const seat = 36;
export const seatedHip = seat + 7;
export const usualChair: Prop = chair(-12, seat);
export const sitting: Pose = {
  leg: { hip: 90, knee: 90 },
  arm: { shoulder: -4, elbow: 14 },
  anchor: ['hip', [0, seatedHip]],
};
export const floorUnderChair: Prop = floor(-26, 66);

/** Lying on the back, head to the left; knees bent with the feet down. */
export const onBack = 9.5;
export const kneesBent: Leg = { ankleAt: [48, sole], kneeTo: [0, 1, 0] };
export const lyingOnBack: Pose = {
  lean: -90,
  leg: { hip: 0, knee: 0, ankle: -8 },
  arm: { shoulder: 6, elbow: 8 },
  anchor: ['pelvis', [0, onBack]],
};
export const matUnder: Prop = floor(-76, 98);

/** Lying on the front, head to the right, the forehead on the hands. */
export const lyingOnFront: Pose = {
  lean: 90,
  leg: { hip: -1, knee: 6, ankle: -48 },
  arm: { handAt: [64, 5, 3], elbowTo: [0.6, 0, 1] },
  farArm: { handAt: [64, 5, -3], elbowTo: [0.6, 0, -1] },
  nod: -4,
  anchor: ['pelvis', [0, onBack]],
};
export const matUnderFront: Prop = floor(-98, 78);

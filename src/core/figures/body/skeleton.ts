/** Where every joint is: the pose worked out from the pelvis to the ends of the limbs. */
import { lengths } from './lengths.ts';
import {
  type Arm,
  type ArmAngles,
  type ArmReach,
  farArmOf,
  farLegOf,
  type Leg,
  type LegAngles,
  type LegReach,
  type Place,
  type Point,
  type Pose,
} from './pose.ts';
import {
  aboutForward,
  aboutRight,
  aboutUp,
  cross,
  type Frame,
  from,
  lengthOf,
  minus,
  plus,
  square,
  times,
  unit,
  type Vec,
  world,
} from './turn.ts';

export interface Skeleton {
  readonly points: Readonly<Record<Point, Vec>>;
  readonly frames: Readonly<
    Record<'pelvis' | 'chest' | 'head' | 'hand' | 'foot' | 'far-hand' | 'far-foot', Frame>
  >;
}

/** 1: the right side, which works; -1: the other. */
type Sign = 1 | -1;

/** The joint between two bars from a point to a place; as far as they reach. */
const twoBars = (start: Vec, place: Vec, first: number, second: number, towards: Vec) => {
  const whole = minus(place, start);
  const reach = Math.min(lengthOf(whole), first + second - 0.01);
  const along = unit(whole);
  const part = (first ** 2 - second ** 2 + reach ** 2) / (2 * reach);
  const aside = Math.sqrt(Math.max(0, first ** 2 - part ** 2));
  const joint = plus(start, plus(times(along, part), times(unit(square(towards, along)), aside)));
  return { joint, end: plus(start, times(along, reach)) };
};

const placeFor = (place: Place, z: number): Vec => [place[0], place[1], place[2] ?? z];

/** The frame of a bar that points down its own length, facing as near as may be to `facing`. */
const frameAlong = (down: Vec, facing: Vec): Frame => {
  const up = times(down, -1);
  const forward = unit(square(facing, up));
  return [forward, up, cross(forward, up)];
};

const soleAs = (heelUp: number): Frame => aboutRight(world, -heelUp);

const isReach = (limb: Leg | Arm): limb is LegReach | ArmReach => 'ankleAt' in limb || 'handAt' in limb;

const shankOf = (hip: Vec, pelvis: Frame, leg: Leg, sign: Sign) => {
  if (isReach(leg)) {
    const { ankleAt, kneeTo = [1, 0, 0] } = leg as LegReach;
    const { joint, end } = twoBars(hip, placeFor(ankleAt, hip[2]), lengths.thigh, lengths.shank, kneeTo);
    return { knee: joint, ankle: end, shank: frameAlong(unit(minus(end, joint)), kneeTo) };
  }
  const { hip: flexion = 0, abduction = 0, turnOut = 0, knee: bend = 0 } = leg as LegAngles;
  const thigh = aboutUp(aboutForward(aboutRight(pelvis, flexion), -abduction * sign), -turnOut * sign);
  const shank = aboutRight(thigh, -bend);
  const knee = from(hip, thigh, [0, -lengths.thigh, 0]);
  return { knee, ankle: from(knee, shank, [0, -lengths.shank, 0]), shank };
};

const legOf = (hip: Vec, pelvis: Frame, leg: Leg, sign: Sign) => {
  const { knee, ankle, shank } = shankOf(hip, pelvis, leg, sign);
  const { ankle: dorsiflexion } = leg;
  const foot = dorsiflexion === undefined ? soleAs(leg.heelUp ?? 0) : aboutRight(shank, dorsiflexion);
  /** Toes stay on the floor when the heel leaves it. */
  const toes = (leg.heelUp ?? 0) > 0 ? world : foot;
  const low = -1.85;
  const ball = from(ankle, foot, [8, low, 0]);
  return {
    hip,
    knee,
    ankle,
    heel: from(ankle, foot, [-3, low, 0]),
    ball,
    toe: from(ball, toes, [5.5, 0, 0]),
    foot,
  };
};

const reachingArm = (shoulder: Vec, arm: ArmReach) => {
  const { handAt, elbowTo = [-1, -1, 0], fingersTo } = arm;
  const grip = fingersTo ? 0 : lengths.palm;
  const place = placeFor(handAt, shoulder[2]);
  const { joint, end } = twoBars(shoulder, place, lengths.upperArm, lengths.forearm + grip, elbowTo);
  const forearm = frameAlong(unit(minus(end, joint)), times(elbowTo, -1));
  const wrist = from(joint, forearm, [0, -lengths.forearm, 0]);
  return { elbow: joint, wrist, hand: fingersTo ? frameAlong(unit(fingersTo), forearm[1]) : forearm };
};

const armOf = (shoulder: Vec, chest: Frame, arm: Arm, sign: Sign) => {
  const ends = (elbow: Vec, wrist: Vec, hand: Frame) => ({
    shoulder,
    elbow,
    wrist,
    hand,
    palm: from(wrist, hand, [0, -lengths.palm, 0]),
    fingers: from(wrist, hand, [0, -lengths.hand + 4, 0]),
  });
  if (isReach(arm)) {
    const { elbow, wrist, hand } = reachingArm(shoulder, arm as ArmReach);
    return ends(elbow, wrist, hand);
  }
  const {
    shoulder: flexion = 0,
    abduction = 0,
    turnOut = 0,
    elbow: bend = 0,
    pronation = 0,
    wrist: palmar = 0,
  } = arm as ArmAngles;
  const upper = aboutUp(aboutForward(aboutRight(chest, flexion), -abduction * sign), -turnOut * sign);
  const elbow = from(shoulder, upper, [0, -lengths.upperArm, 0]);
  const forearm = aboutRight(upper, bend);
  const wrist = from(elbow, forearm, [0, -lengths.forearm, 0]);
  return ends(elbow, wrist, aboutRight(aboutUp(forearm, (90 + pronation) * sign), palmar));
};

const spineOf = (pelvis: Vec, pose: Pose) => {
  const frame = aboutForward(aboutRight(world, -(pose.lean ?? 0)), pose.tilt ?? 0);
  const chestFrame = aboutForward(aboutRight(frame, -(pose.bend ?? 0)), pose.bendAside ?? 0);
  const waist = from(pelvis, frame, [0, lengths.trunk * 0.4, 0]);
  const chest = from(waist, chestFrame, [0, lengths.trunk * 0.6, 0]);
  const neck = aboutForward(aboutRight(chestFrame, -(pose.neck ?? 0)), pose.neckAside ?? 0);
  return {
    points: { pelvis, waist, chest, head: from(chest, neck, [0, lengths.neck, 0]) },
    frames: { pelvis: frame, chest: chestFrame, head: aboutRight(neck, -(pose.nod ?? 0)) },
  };
};

const far = <T extends object>(limb: T) =>
  Object.fromEntries(Object.entries(limb).map(([name, value]) => [`far-${name}`, value]));

const skeletonFrom = (pelvis: Vec, pose: Pose): Skeleton => {
  const { points, frames } = spineOf(pelvis, pose);
  const hipOf = (sign: Sign) => from(pelvis, frames.pelvis, [0, 0, lengths.halfHips * sign]);
  const shoulderOf = (sign: Sign) => from(points.chest, frames.chest, [0, 0, lengths.halfShoulders * sign]);
  const { foot, ...leg } = legOf(hipOf(1), frames.pelvis, pose.leg, 1);
  const { foot: farFoot, ...farLeg } = legOf(hipOf(-1), frames.pelvis, farLegOf(pose), -1);
  const { hand, ...arm } = armOf(shoulderOf(1), frames.chest, pose.arm, 1);
  const { hand: farHand, ...farArm } = armOf(shoulderOf(-1), frames.chest, farArmOf(pose), -1);
  return {
    points: { ...points, ...leg, ...arm, ...far(farLeg), ...far(farArm) } as Skeleton['points'],
    frames: { ...frames, hand, foot, 'far-hand': farHand, 'far-foot': farFoot },
  };
};

/** The pose with its anchor on its place; it is never moved sideways. */
export const skeletonOf = (pose: Pose): Skeleton => {
  const [point, place] = pose.anchor;
  const loose = skeletonFrom([0, 0, 0], pose).points[point];
  return skeletonFrom([place[0] - loose[0], place[1] - loose[1], 0], pose);
};

/**
 * A pose as joint angles in degrees from the anatomical position (0), the way the trade counts them. The limb
 * that works is the right one; a left one is the mirrored drawing.
 */
import type { Vec } from './turn.ts';

/** A point of the body that can be put on a place or pointed at; "far" is the other side. */
type LimbPoint =
  | 'hip'
  | 'knee'
  | 'ankle'
  | 'heel'
  | 'ball'
  | 'toe'
  | 'shoulder'
  | 'elbow'
  | 'wrist'
  | 'palm'
  | 'fingers';
export type Point = LimbPoint | `far-${LimbPoint}` | 'pelvis' | 'waist' | 'chest' | 'head';

/** A place in the drawing: forward, up and, where it matters, to the right. */
export type Place = readonly [number, number] | Vec;

export interface LegAngles {
  readonly hip?: number;
  readonly abduction?: number;
  readonly turnOut?: number;
  readonly knee?: number;
  /** Dorsiflexion; a sole left out lies as the floor does. */
  readonly ankle?: number;
  /** The sole's slope, heel up, where the ankle follows from it. */
  readonly heelUp?: number;
}
/** A foot that stays on its place: the leg bends as it must. */
export interface LegReach {
  readonly ankleAt: Place;
  /** Where the knee points. */
  readonly kneeTo?: Vec;
  readonly ankle?: number;
  readonly heelUp?: number;
}
export type Leg = LegAngles | LegReach;

export interface ArmAngles {
  readonly shoulder?: number;
  readonly abduction?: number;
  readonly turnOut?: number;
  readonly elbow?: number;
  /** Pronation from thumb up; supination below 0. */
  readonly pronation?: number;
  readonly wrist?: number;
}
/** A hand that holds or leans on something. */
export interface ArmReach {
  /** The middle of a closed hand; with `fingersTo` the wrist of an open one. */
  readonly handAt: Place;
  readonly elbowTo?: Vec;
  readonly fingersTo?: Vec;
}
export type Arm = ArmAngles | ArmReach;

export interface Pose {
  /** Whole body: forward, to its right side. */
  readonly lean?: number;
  readonly tilt?: number;
  /** Flexion in the low back. */
  readonly bend?: number;
  /** Side bend there, to the right. */
  readonly bendAside?: number;
  /** Flexion at the foot and the top of the neck, and to the right. */
  readonly neck?: number;
  readonly nod?: number;
  readonly neckAside?: number;
  readonly leg: Leg;
  readonly farLeg?: Leg;
  readonly arm: Arm;
  readonly farArm?: Arm;
  readonly anchor: readonly [point: Point, place: Place];
}

const blendAny = (a: unknown, b: unknown, share: number): unknown => {
  if (typeof a === 'object' && a && typeof b === 'object' && b) {
    // A hand or foot that lets go has no way in between.
    if ('handAt' in a !== 'handAt' in b || 'ankleAt' in a !== 'ankleAt' in b) return b;
    if (Array.isArray(a) && Array.isArray(b)) return a.map((one, at) => blendAny(one, b[at], share));
    return Object.fromEntries(
      Object.keys({ ...a, ...b }).map((key) => [
        key,
        blendAny((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], share),
      ]),
    );
  }
  if (typeof a === 'number' || typeof b === 'number')
    return Number(a ?? 0) + (Number(b ?? 0) - Number(a ?? 0)) * share;
  return b;
};

/** The same on the other side: places and directions in space are mirrored, angles count alike. */
const mirrored = <L extends Leg | Arm>(limb: L): L =>
  Object.fromEntries(
    Object.entries(limb).map(([key, value]) => [
      key,
      Array.isArray(value) && value.length === 3 ? [value[0], value[1], -value[2]] : value,
    ]),
  ) as unknown as L;

export const farLegOf = (pose: Pose): Leg => pose.farLeg ?? mirrored(pose.leg);
export const farArmOf = (pose: Pose): Arm => pose.farArm ?? mirrored(pose.arm);

const whole = (pose: Pose): Pose => ({ ...pose, farLeg: farLegOf(pose), farArm: farArmOf(pose) });

/** A pose on the way from one to the other. */
export const between = (start: Pose, end: Pose, share: number): Pose =>
  blendAny(whole(start), whole(end), share) as Pose;

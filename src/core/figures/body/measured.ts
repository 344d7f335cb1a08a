/** The angles a pose comes to, read off the drawn points, in degrees as the trade counts them. */
import { farArmOf, type Point, type Pose } from './pose.ts';
import type { Skeleton } from './skeleton.ts';
import { degrees, dot, type Frame, minus, unit, type Vec } from './turn.ts';

export interface LimbAngles {
  readonly hip: number;
  readonly legAbduction: number;
  readonly knee: number;
  readonly ankle: number;
  readonly shoulder: number;
  readonly armAbduction: number;
  readonly armTurn: number;
  readonly elbow: number;
  readonly wrist: number;
}

const angleBetween = (a: Vec, b: Vec): number =>
  degrees(Math.acos(Math.max(-1, Math.min(1, dot(unit(a), unit(b))))));

/** Flexion in the plane of the body's middle and abduction out of it, of a bar that hangs down at 0. */
const inFrame = (bar: Vec, [forward, up, right]: Frame, sign: number) => {
  const [ahead, down, aside] = [dot(bar, forward), -dot(bar, up), dot(bar, right) * sign];
  const flexion = degrees(Math.atan2(ahead, down));
  const isAside = Math.abs(aside) > 0.55;
  return {
    flexion: isAside
      ? degrees(Math.atan2(ahead, Math.hypot(down, aside)))
      : flexion < -100
        ? flexion + 360
        : flexion,
    abduction: isAside ? degrees(Math.atan2(aside, down)) : degrees(Math.asin(aside)),
  };
};

export const anglesOf = ({ points, frames }: Skeleton, pose: Pose, isFar: boolean): LimbAngles => {
  const at = (name: string) => points[(isFar ? `far-${name}` : name) as Point];
  const bar = (start: string, end: string) => unit(minus(at(end), at(start)));
  const sign = isFar ? -1 : 1;
  const [thigh, shank] = [bar('hip', 'knee'), bar('knee', 'ankle')];
  const [upper, forearm] = [bar('shoulder', 'elbow'), bar('elbow', 'wrist')];
  const leg = inFrame(thigh, frames.pelvis, sign);
  const arm = inFrame(upper, frames.chest, sign);
  const posed = isFar ? farArmOf(pose) : pose.arm;
  return {
    hip: leg.flexion,
    legAbduction: leg.abduction,
    knee: angleBetween(thigh, shank),
    ankle: angleBetween(shank, frames[isFar ? 'far-foot' : 'foot'][0]) - 90,
    shoulder: arm.flexion,
    armAbduction: arm.abduction,
    armTurn: 'handAt' in posed ? 0 : (posed.turnOut ?? 0),
    elbow: angleBetween(upper, forearm),
    wrist: angleBetween(forearm, bar('wrist', 'palm')),
  };
};

/**
 * External moment of gravity when one limb is lifted about one joint.
 *
 * M = g · cos φ · (K · body mass · stature + weight · distance), φ the angle of the limb from the
 * horizontal. Statics only: slow movement, rigid segments. It is the moment the muscles must answer,
 * not the force in a muscle or a joint.
 */

import type { Lever } from '../catalogue/setting.ts';
import type { Citation } from '../citation.ts';
import type { JointName } from '../joints.ts';
import type { VariationSource } from '../sources/variation.ts';
import { cuffAboveAnkleM, footCentreBelowAnkleShare, legShare } from './body-lengths.ts';
import { gravity, radians } from './gravity.ts';
import { lengthShare, type Sex, segments } from './segments.ts';

export const limbLiftCitations: readonly Citation<VariationSource>[] = [
  {
    source: 'de-leva-1996',
    locator: 'masses, centres and lengths of leg and arm',
    mark: 'computed',
    remark: 'Lever constants are sums of segment mass times distance, worked out here.',
  },
];

/** Distance of a segment's centre of mass from its own upper joint. */
const centre = (name: 'upperArm' | 'forearm' | 'hand' | 'thigh' | 'shank', sex: Sex): number =>
  segments[sex][name].centreShare * lengthShare(name, sex);

const constants: Record<Lever, (sex: Sex) => number> = {
  shank: (sex) =>
    segments[sex].shank.massShare * centre('shank', sex) +
    segments[sex].foot.massShare * (lengthShare('shank', sex) + footCentreBelowAnkleShare),
  'straight-leg': (sex) => constants['bent-leg'](sex) + constants.shank(sex),
  'bent-leg': (sex) =>
    segments[sex].thigh.massShare * centre('thigh', sex) +
    (segments[sex].shank.massShare + segments[sex].foot.massShare) * lengthShare('thigh', sex),
  forearm: (sex) =>
    segments[sex].forearm.massShare * centre('forearm', sex) +
    segments[sex].hand.massShare * (lengthShare('forearm', sex) + centre('hand', sex)),
  'straight-arm': (sex) => constants['bent-arm'](sex) + constants.forearm(sex),
  'bent-arm': (sex) =>
    segments[sex].upperArm.massShare * centre('upperArm', sex) +
    (segments[sex].forearm.massShare + segments[sex].hand.massShare) * lengthShare('upperArm', sex),
};

/** Σ segment mass share × distance share: the lever per body mass and stature. */
export const leverConstant = (lever: Lever, sex: Sex): number => constants[lever](sex);

export const jointOfLever: Readonly<Record<Lever, JointName>> = {
  'straight-leg': 'hip',
  'bent-leg': 'hip',
  shank: 'knee',
  forearm: 'elbow',
  'straight-arm': 'shoulder',
  'bent-arm': 'shoulder',
};

/** Joint to the usual place of the weight: an ankle cuff, or the middle of the hand. */
export const weightDistanceM = (lever: Lever, sex: Sex, statureM: number): number => {
  switch (lever) {
    case 'straight-leg':
      return legShare(sex) * statureM - cuffAboveAnkleM;
    case 'bent-leg':
      return lengthShare('thigh', sex) * statureM;
    case 'shank':
      return lengthShare('shank', sex) * statureM - cuffAboveAnkleM;
    case 'forearm':
      return (lengthShare('forearm', sex) + centre('hand', sex)) * statureM;
    case 'straight-arm':
      return (lengthShare('upperArm', sex) + lengthShare('forearm', sex) + centre('hand', sex)) * statureM;
    case 'bent-arm':
      return lengthShare('upperArm', sex) * statureM;
  }
};

export interface LimbLift {
  readonly lever: Lever;
  readonly sex: Sex;
  readonly massKg: number;
  readonly statureM: number;
  readonly angleDeg: number;
  readonly addedKg: number;
  /** Joint to weight; left out, the usual place for this lever. */
  readonly distanceM?: number | undefined;
}

export const limbLiftMoment = (lift: LimbLift): number => {
  const distance = lift.distanceM ?? weightDistanceM(lift.lever, lift.sex, lift.statureM);
  const limb = leverConstant(lift.lever, lift.sex) * lift.massKg * lift.statureM;
  return gravity * Math.cos(radians(lift.angleDeg)) * (limb + lift.addedKg * distance);
};

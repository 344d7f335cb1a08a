/**
 * External moment of gravity when one limb is lifted about one joint.
 *
 * M = g · cos φ · (K · body mass · stature + weight · distance), φ the angle of the limb from the
 * horizontal. Statics only: slow movement, rigid segments. It is the moment the muscles must answer,
 * not the force in a muscle or a joint. No measurement was found to compare.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { cuffAboveAnkleM, legShare } from '../body/body-lengths.ts';
import { addedField, distanceField, massField, sexField, statureField } from '../body/fields.ts';
import { gravity, radians } from '../body/gravity.ts';
import { leverConstant, leverConstantIn, type SegmentSet } from '../body/lever-constant.ts';
import { olderSegmentCitations } from '../body/older-segments.ts';
import { lengthShare, type Sex, segmentCitations, segments } from '../body/segments.ts';
import { winterCitations } from '../body/winter-segments.ts';
import type { JointName } from '../joints.ts';
import { type Lever, levers } from '../setting.ts';

export const limbLiftCitations: readonly Citation[] = [
  {
    source: 'de-leva-1996',
    locator: 'masses, centres and lengths of leg and arm',
    mark: 'computed',
    remark: 'Lever constants are sums of segment mass times distance, worked out here.',
  },
  ...segmentCitations,
];

export const jointOfLever: Readonly<Record<Lever, JointName>> = {
  'straight-leg': 'hip',
  'bent-leg': 'hip',
  shank: 'knee',
  forearm: 'elbow',
  'straight-arm': 'shoulder',
  'bent-arm': 'shoulder',
};

const handCentreShare = (sex: Sex): number => segments[sex].hand.centreShare * lengthShare('hand', sex);

const usualDistanceM: Readonly<Record<Lever, (sex: Sex, statureM: number) => number>> = {
  'straight-leg': (sex, statureM) => legShare(sex) * statureM - cuffAboveAnkleM,
  'bent-leg': (sex, statureM) => lengthShare('thigh', sex) * statureM,
  shank: (sex, statureM) => lengthShare('shank', sex) * statureM - cuffAboveAnkleM,
  forearm: (sex, statureM) => (lengthShare('forearm', sex) + handCentreShare(sex)) * statureM,
  'straight-arm': (sex, statureM) =>
    (lengthShare('upperArm', sex) + lengthShare('forearm', sex) + handCentreShare(sex)) * statureM,
  'bent-arm': (sex, statureM) => lengthShare('upperArm', sex) * statureM,
};

/** Joint to the usual place of the weight: an ankle cuff, or the middle of the hand. */
export const weightDistanceM = (lever: Lever, sex: Sex, statureM: number): number =>
  usualDistanceM[lever](sex, statureM);

export interface LimbLift {
  readonly lever: Lever;
  readonly sex: Sex;
  readonly massKg: number;
  readonly statureM: number;
  readonly angleDeg: number;
  readonly addedKg: number;
  readonly distanceM?: number | undefined;
}

const moment = (lift: LimbLift, constant: number): number => {
  const distance = lift.distanceM ?? weightDistanceM(lift.lever, lift.sex, lift.statureM);
  const limb = constant * lift.massKg * lift.statureM;
  return gravity * Math.cos(radians(lift.angleDeg)) * (limb + lift.addedKg * distance);
};

export const limbLiftMoment = (lift: LimbLift): number => moment(lift, leverConstant(lift.lever, lift.sex));

/** The same lift by another segment table; null where that table lacks the limb. */
const limbLiftMomentIn = (set: SegmentSet, lift: LimbLift): number | null => {
  const constant = leverConstantIn(set, lift.lever, lift.sex);
  return constant === null ? null : moment(lift, constant);
};

export const limbLiftRow = calculation({
  id: 'limb-lift-moment',
  title: 'Joint moment when lifting a straight or bent limb',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    { name: 'lever', kind: 'enum', values: levers, about: 'Which part of the limb is lifted.' },
    {
      name: 'angleDeg',
      kind: 'number',
      unit: 'deg',
      min: -90,
      max: 90,
      about: 'Angle of the limb from the horizontal.',
    },
    addedField,
    distanceField,
  ],
  result: [
    { name: 'joint', unit: '' },
    { name: 'momentNm', unit: 'N.m' },
    {
      name: 'olderSegmentsNm',
      unit: 'N.m',
      about: 'Same lift with segment masses of people of about seventy.',
    },
    { name: 'cadaverSegmentsNm', unit: 'N.m', about: 'Same lift with the older leg table; null for arms.' },
  ],
  citations: [...limbLiftCitations, ...olderSegmentCitations, ...winterCitations],
  calculate: (input) =>
    answer(
      {
        joint: jointOfLever[input.lever],
        momentNm: limbLiftMoment(input),
        olderSegmentsNm: limbLiftMomentIn('older', input),
        cadaverSegmentsNm: limbLiftMomentIn('cadaver', input),
      },
      [
        {
          code: 'no-measurement',
          text: 'No measurement found to compare the model with. The three segment tables show how far the choice of table moves the figure.',
        },
      ],
    ),
  example: {
    sex: 'female',
    massKg: 65,
    statureM: 1.62,
    lever: 'straight-leg',
    angleDeg: 30,
    addedKg: 2,
  },
});

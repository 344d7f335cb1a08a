/**
 * Lever constants of a limb: Σ segment mass share × distance from the joint as a share of stature.
 * Three segment sets, so that the part of a result which hangs on the choice of table can be shown.
 */
import type { Lever } from '../setting.ts';
import { footCentreBelowAnkleShare } from './body-lengths.ts';
import { olderMassShares } from './older-segments.ts';
import { lengthShare, type Sex, segments } from './segments.ts';
import { winterLegSegments } from './winter-segments.ts';

const segmentSets = ['young', 'older', 'cadaver'] as const;
export type SegmentSet = (typeof segmentSets)[number];

interface LimbSegment {
  readonly massShare: number;
  readonly centreShare: number;
  readonly lengthShare: number;
}

type LimbSegmentName = 'upperArm' | 'forearm' | 'hand' | 'thigh' | 'shank' | 'foot';
type Limbs = Readonly<Record<LimbSegmentName, LimbSegment>>;

const youngLimb = (name: LimbSegmentName, sex: Sex, massShare: number): LimbSegment => ({
  massShare,
  centreShare: segments[sex][name].centreShare,
  lengthShare: lengthShare(name, sex),
});

const limbsWith = (sex: Sex, mass: (name: LimbSegmentName) => number): Limbs => ({
  upperArm: youngLimb('upperArm', sex, mass('upperArm')),
  forearm: youngLimb('forearm', sex, mass('forearm')),
  hand: youngLimb('hand', sex, mass('hand')),
  thigh: youngLimb('thigh', sex, mass('thigh')),
  shank: youngLimb('shank', sex, mass('shank')),
  foot: youngLimb('foot', sex, mass('foot')),
});

const young = (sex: Sex): Limbs => limbsWith(sex, (name) => segments[sex][name].massShare);
const older = (sex: Sex): Limbs => limbsWith(sex, (name) => olderMassShares[sex][name]);

/** Only the leg is tabled for the third set; its arm is left out rather than pieced together. */
const cadaverLegs = (sex: Sex): Limbs => ({
  ...young(sex),
  ...winterLegSegments,
  foot: { ...young(sex).foot, ...winterLegSegments.foot },
});

const limbsOf: Readonly<Record<SegmentSet, (sex: Sex) => Limbs>> = { young, older, cadaver: cadaverLegs };

const centre = (segment: LimbSegment): number => segment.centreShare * segment.lengthShare;

const proximal = (upper: LimbSegment, carriedMass: number): number =>
  upper.massShare * centre(upper) + carriedMass * upper.lengthShare;

const shankLever = ({ shank, foot }: Limbs): number =>
  shank.massShare * centre(shank) + foot.massShare * (shank.lengthShare + footCentreBelowAnkleShare);

const forearmLever = ({ forearm, hand }: Limbs): number =>
  proximal(forearm, hand.massShare) + hand.massShare * centre(hand);

/** Knee bent to a right angle: the lower leg hangs from the knee. */
const bentLegLever = ({ thigh, shank, foot }: Limbs): number =>
  proximal(thigh, shank.massShare + foot.massShare);

/** Elbow bent to a right angle: the forearm hangs from, or stands on, the elbow. */
const bentArmLever = ({ upperArm, forearm, hand }: Limbs): number =>
  proximal(upperArm, forearm.massShare + hand.massShare);

const leverOf: Readonly<Record<Lever, (limbs: Limbs) => number>> = {
  shank: shankLever,
  'bent-leg': bentLegLever,
  'straight-leg': (limbs) => bentLegLever(limbs) + shankLever(limbs),
  forearm: forearmLever,
  'bent-arm': bentArmLever,
  'straight-arm': (limbs) => bentArmLever(limbs) + forearmLever(limbs),
};

const armLevers: readonly Lever[] = ['forearm', 'bent-arm', 'straight-arm'];

/** The constant in a named set; null where that set has no figures for the limb. */
export const leverConstantIn = (set: SegmentSet, lever: Lever, sex: Sex): number | null =>
  set === 'cadaver' && armLevers.includes(lever) ? null : leverOf[lever](limbsOf[set](sex));

export const leverConstant = (lever: Lever, sex: Sex): number => leverOf[lever](young(sex));

/**
 * Centre of mass of the whole body above the floor, as a share of stature, from the segment table.
 * With arms at the sides it is the figure known from force plates; with arms held forward at
 * shoulder height it is the one the push models need.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import {
  ankleHeightShare,
  ballToShoulderShare,
  footCentreBelowAnkleShare,
  legShare,
} from './body-lengths.ts';
import { sexField, statureField } from './fields.ts';
import { leverConstant } from './lever-constant.ts';
import {
  lengthShare,
  neckBaseAboveShoulderMm,
  type Sex,
  sampleStatureMm,
  segmentCitations,
  segments,
} from './segments.ts';

/** Arms counted at the shoulder. */
export const bodyCentreShare = (sex: Sex): number => {
  const { headAndNeck, trunk, thigh, shank, foot, upperArm, forearm, hand } = segments[sex];
  const hip = ankleHeightShare + legShare(sex);
  const knee = ankleHeightShare + lengthShare('shank', sex);
  const shoulder = ballToShoulderShare(sex);
  const neckBase = shoulder + neckBaseAboveShoulderMm[sex] / sampleStatureMm[sex];
  return (
    2 * foot.massShare * footCentreBelowAnkleShare +
    2 * shank.massShare * (ankleHeightShare + lengthShare('shank', sex) * (1 - shank.centreShare)) +
    2 * thigh.massShare * (knee + lengthShare('thigh', sex) * (1 - thigh.centreShare)) +
    trunk.massShare * (hip + lengthShare('trunk', sex) * (1 - trunk.centreShare)) +
    headAndNeck.massShare * (neckBase + lengthShare('headAndNeck', sex) * (1 - headAndNeck.centreShare)) +
    2 * (upperArm.massShare + forearm.massShare + hand.massShare) * shoulder
  );
};

export const bodyCentreArmsDownShare = (sex: Sex): number =>
  bodyCentreShare(sex) - 2 * leverConstant('straight-arm', sex);

export const bodyCentreRow = calculation({
  id: 'body-centre-height',
  title: 'Height of the centre of mass, standing, arms at the sides',
  area: 'variation',
  input: [sexField, statureField],
  result: units({ shareOfStature: '1', heightM: 'm' }),
  citations: segmentCitations,
  calculate: ({ sex, statureM }) => {
    const share = bodyCentreArmsDownShare(sex);
    return answer({ shareOfStature: share, heightM: share * statureM });
  },
  example: { sex: 'female', statureM: 1.62 },
});

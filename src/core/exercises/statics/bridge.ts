/**
 * Load on the foot and hip-extension moment at the top of a bridge.
 *
 * Planar statics: lying on the back, feet under the knees, knee, hip and shoulder in one line,
 * shoulders as the pivot 6 cm above the floor, head and arms resting. One leg: the other is either
 * bent as it was or straight in line with the trunk. No measurement was found to compare.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { ankleHeightShare, footCentreBelowAnkleShare } from '../body/body-lengths.ts';
import { addedField, massField, sexField, statureField } from '../body/fields.ts';
import { degrees, gravity } from '../body/gravity.ts';
import { lengthShare, type Sex, segments } from '../body/segments.ts';

const bridgeCitations: readonly Citation[] = [
  {
    source: 'de-leva-1996',
    locator: 'trunk, thigh, shank and foot',
    mark: 'computed',
    remark: 'Not validated: no measured force of a bridge was found.',
  },
];

const shoulderHeightM = 0.06;

export interface Bridge {
  readonly sex: Sex;
  readonly massKg: number;
  readonly statureM: number;
  readonly legs: 'two' | 'one-bent' | 'one-straight';
  /** Weight lying on the pelvis. */
  readonly addedKg: number;
}

export interface BridgeLoad {
  readonly angleRadians: number;
  /** Vertical force under the working foot or feet together, as a share of body weight. */
  readonly footForceShare: number;
  readonly hipMomentNm: number;
}

/** Σ mass share × distance from the shoulder along the line, for everything the feet help to hold. */
const liftedMoment = ({ sex, massKg, legs, addedKg }: Bridge): number => {
  const { trunk, thigh, shank, foot } = segments[sex];
  const hip = lengthShare('trunk', sex);
  const knee = hip + lengthShare('thigh', sex);
  const lowerLeg = shank.massShare + foot.massShare;
  const straightLowerLeg =
    shank.massShare * (knee + shank.centreShare * lengthShare('shank', sex)) +
    foot.massShare * (knee + lengthShare('shank', sex) + footCentreBelowAnkleShare);
  return (
    trunk.massShare * trunk.centreShare * hip +
    2 * thigh.massShare * (hip + thigh.centreShare * lengthShare('thigh', sex)) +
    lowerLeg * knee +
    (legs === 'one-straight' ? straightLowerLeg : lowerLeg * knee) +
    (addedKg / massKg) * hip
  );
};

/** null where the body is too small for the line from shoulder to knee to rise from the floor. */
export const bridgeLoad = (bridge: Bridge): BridgeLoad | null => {
  const { sex, massKg, statureM, legs } = bridge;
  const { thigh, shank, foot } = segments[sex];
  const kneeHeightM = (ankleHeightShare + lengthShare('shank', sex)) * statureM;
  const line = lengthShare('trunk', sex) + lengthShare('thigh', sex);
  const sine = (kneeHeightM - shoulderHeightM) / (line * statureM);
  if (sine <= 0 || sine >= 1) return null;
  const angle = Math.asin(sine);
  const footForceShare = liftedMoment(bridge) / line;
  const perLeg = legs === 'two' ? footForceShare / 2 : footForceShare;
  const upward = (perLeg - shank.massShare - foot.massShare) * lengthShare('thigh', sex);
  const downward = thigh.massShare * thigh.centreShare * lengthShare('thigh', sex);
  const hipMomentNm = (upward - downward) * Math.cos(angle) * massKg * gravity * statureM;
  return { angleRadians: angle, footForceShare, hipMomentNm };
};

export const bridgeRow = calculation({
  id: 'bridge-load',
  title: 'Foot load and hip moment of a bridge',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    {
      name: 'legs',
      kind: 'enum',
      values: ['two', 'one-bent', 'one-straight'],
      about: 'One leg: the lifted leg stays bent or lies straight in line with the trunk.',
    },
    addedField,
  ],
  result: [
    { name: 'footForceShare', unit: '1', about: 'Of body weight, under the working foot or feet together.' },
    { name: 'hipMomentNm', unit: 'N.m', about: 'Per working leg.' },
    { name: 'lineDeg', unit: 'deg', about: 'Line of knee, hip and shoulder from the floor.' },
  ],
  citations: bridgeCitations,
  calculate: (input) => {
    const load = bridgeLoad(input);
    if (!load) return refuse('statureM', 'outside-validity', 'The model does not hold for this stature.');
    const { footForceShare, hipMomentNm, angleRadians } = load;
    return answer({ footForceShare, hipMomentNm, lineDeg: degrees(angleRadians) }, [
      { code: 'no-measurement', text: 'No measurement found to compare the model with.' },
    ]);
  },
  example: { sex: 'male', massKg: 80, statureM: 1.75, legs: 'two', addedKg: 0 },
});

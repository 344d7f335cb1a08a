/**
 * Share of body weight on the hands in a push-up with straight body, from stature and heights.
 *
 * Closed form: rigid body about the ball of the foot, arms at right angles to the trunk, force along
 * the arms, so no moment at the shoulder. Constants of the male segment set for both sexes, because
 * both sets over-predict women and the measurements found no difference by sex. Mean error against
 * the six measured variants is 3 points, largest 5.6. It does not hold for knees on the floor.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Outcome, refuse } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { sexField, statureField } from '../body/fields.ts';
import { degrees } from '../body/gravity.ts';
import { kneePushUpShare, pushUpMeasuredCitations, pushUpMeasuredShare } from './push-up-measured.ts';

export const pushUpCitations: readonly Citation[] = [
  {
    source: 'de-leva-1996',
    locator: 'male masses, centres and lengths reduced to a closed form',
    mark: 'computed',
    remark: 'Straight-body statics without a fitted parameter; male constants serve both sexes.',
  },
];

/** Ball of foot to shoulder, and arm length less foot offset, as shares of stature. */
const bodyLengthShare = 0.8305;
const armOffsetShare = 0.2479;
const armOffsetM = 0.03;
/** Weight of the body and its offset from the line, both over the lever to the shoulder. */
const alongBody = 0.7139;
const acrossBody = 0.0614;

export interface PushUpShare {
  readonly angleRadians: number;
  readonly alongArmShare: number;
  readonly verticalShare: number;
}

/** null where the heights cannot be reached with a straight body or the model leaves no weight on the hands. */
export const pushUpShare = (
  statureM: number,
  handHeightM: number,
  footHeightM: number,
): PushUpShare | null => {
  const length = bodyLengthShare * statureM;
  const offset = armOffsetShare * statureM + armOffsetM;
  const reach = Math.hypot(length, offset);
  const rise = handHeightM - footHeightM;
  if (Math.abs(rise) >= reach) return null;
  const angle = Math.asin(rise / reach) + Math.atan(offset / length);
  const alongArm = alongBody * Math.cos(angle) - acrossBody * Math.sin(angle);
  const vertical = alongArm * Math.cos(angle);
  if (alongArm <= 0 || vertical <= 0) return null;
  return { angleRadians: angle, alongArmShare: alongArm, verticalShare: vertical };
};

interface PushUpResult {
  readonly verticalShare: number;
  readonly alongArmShare: number | null;
  readonly shareOfBodyMass: number;
  readonly angleDeg: number | null;
  readonly measuredShare: number | null;
  readonly modelError: number | null;
}

const onKnees = (handHeightM: number, footHeightM: number): Outcome<PushUpResult> => {
  if (handHeightM !== 0 || footHeightM !== 0) {
    return refuse(
      handHeightM !== 0 ? 'handHeightM' : 'footHeightM',
      'outside-validity',
      'On the knees only one share was measured, with hands and knees on the floor: give heights of 0.',
    );
  }
  return answer(
    {
      verticalShare: kneePushUpShare,
      alongArmShare: null,
      shareOfBodyMass: kneePushUpShare,
      angleDeg: null,
      measuredShare: kneePushUpShare,
      modelError: null,
    },
    [{ code: 'measured-only', text: 'Measured share; the closed form does not hold on the knees.' }],
  );
};

const onFeet = (statureM: number, handHeightM: number, footHeightM: number): Outcome<PushUpResult> => {
  const model = pushUpShare(statureM, handHeightM, footHeightM);
  if (!model) {
    return refuse(
      handHeightM >= footHeightM ? 'handHeightM' : 'footHeightM',
      'outside-validity',
      'A straight body of this stature cannot push at this height: bring hands and feet nearer in height.',
    );
  }
  const measured = pushUpMeasuredShare(handHeightM, footHeightM);
  return answer(
    {
      verticalShare: model.verticalShare,
      alongArmShare: model.alongArmShare,
      shareOfBodyMass: model.verticalShare,
      angleDeg: degrees(model.angleRadians),
      measuredShare: measured,
      modelError: measured === null ? null : model.verticalShare - measured,
    },
    [
      {
        code: 'male-constants',
        text: 'The male constants serve both sexes; no difference by sex was measured.',
      },
      measured === null
        ? { code: 'no-measurement', text: 'No measurement found for these heights.' }
        : {
            code: 'measured',
            text: 'The measured share, on a straight line between measured heights, goes first.',
          },
    ],
  );
};

export const pushUpRow = calculation({
  id: 'push-up-share',
  title: 'Share of body weight on the hands in a push-up',
  area: 'variation',
  input: [
    sexField,
    statureField,
    { name: 'handHeightM', kind: 'number', unit: 'm', min: 0, max: 2, about: 'Hands above the floor.' },
    { name: 'footHeightM', kind: 'number', unit: 'm', min: 0, max: 2, about: 'Feet above the floor.' },
    { name: 'support', kind: 'enum', values: ['feet', 'knees'] },
  ],
  result: [
    {
      name: 'verticalShare',
      unit: '1',
      about: 'Vertical force over body weight; measured where on the knees.',
    },
    { name: 'alongArmShare', unit: '1', about: 'Force along the arms; null on the knees.' },
    { name: 'shareOfBodyMass', unit: '1', about: 'The vertical share under its other name.' },
    { name: 'angleDeg', unit: 'deg', about: 'Body angle from the floor; null on the knees.' },
    { name: 'measuredShare', unit: '1', about: 'null where nothing was measured.' },
    { name: 'modelError', unit: '1', about: 'Model less measured.' },
  ],
  citations: [...pushUpCitations, ...pushUpMeasuredCitations],
  calculate: ({ statureM, handHeightM, footHeightM, support }) =>
    support === 'knees' ? onKnees(handHeightM, footHeightM) : onFeet(statureM, handHeightM, footHeightM),
  example: { sex: 'female', statureM: 1.62, handHeightM: 0.45, footHeightM: 0, support: 'feet' },
});

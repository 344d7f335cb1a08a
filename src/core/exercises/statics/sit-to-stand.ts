/**
 * Hip plus knee moment per leg when rising from a seat, from statics, with the measured ratios beside.
 *
 * The sum does not depend on trunk lean; how it is split between hip and knee does, and the static knee part
 * alone is not usable. Even the sum rises too little as the seat falls (× 1.2 to 1.7 from 64 to 43 cm, where
 * measured joints rise × 1.9 and 2.4). So the sum is for relative use, and chair heights are ranked by the
 * measured ratios. The hip is taken 9 cm above the seat and the shank 18° forward: assumptions.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import { ankleHeightShare } from '../body/body-lengths.ts';
import { massField, sexField, statureField } from '../body/fields.ts';
import { degrees, gravity, radians } from '../body/gravity.ts';
import { lengthShare, type Sex, segmentCitations, segments } from '../body/segments.ts';
import { chairHeightCitations, relativeHipMoment, relativeKneeMoment } from './chair-height.ts';

const hipAboveSeatM = 0.09;
const shankLeanDeg = 18;

/** Body mass above the knees, the thighs counted by their lever, as a share of body mass. */
const leverMassShare = (sex: Sex): number => {
  const { thigh, shank, foot } = segments[sex];
  const aboveHips = 1 - 2 * (thigh.massShare + shank.massShare + foot.massShare);
  return aboveHips + 2 * thigh.massShare * (1 - thigh.centreShare);
};

export interface SitToStand {
  readonly thighAboveHorizontalDeg: number;
  readonly hipPlusKneeNm: number;
}

/** null where the seat is so high that the thigh would stand upright. */
export const sitToStand = (
  sex: Sex,
  massKg: number,
  statureM: number,
  seatHeightM: number,
): SitToStand | null => {
  const thighM = lengthShare('thigh', sex) * statureM;
  const kneeHeightM =
    (ankleHeightShare + lengthShare('shank', sex) * Math.cos(radians(shankLeanDeg))) * statureM;
  const sine = (seatHeightM + hipAboveSeatM - kneeHeightM) / thighM;
  if (sine >= 1) return null;
  // Below the horizontal the largest moment still comes when the thigh passes it.
  const angle = Math.asin(Math.max(0, sine));
  return {
    thighAboveHorizontalDeg: degrees(angle),
    hipPlusKneeNm: 0.5 * gravity * massKg * thighM * Math.cos(angle) * leverMassShare(sex),
  };
};

export const sitToStandRow = calculation({
  id: 'sit-to-stand-moment',
  title: 'Hip and knee load when standing up from a seat',
  area: 'variation',
  input: [
    sexField,
    massField,
    statureField,
    { name: 'seatHeightM', kind: 'number', unit: 'm', min: 0.1, max: 1, about: 'Seat above the floor.' },
  ],
  result: [
    { name: 'hipPlusKneeNm', unit: 'N.m', about: 'Per leg, for relative use only.' },
    { name: 'thighAboveHorizontalDeg', unit: 'deg' },
    {
      name: 'relativeKneeMoment',
      unit: '1',
      about: 'Measured, against a 64 cm seat; null outside 43–64 cm.',
    },
    { name: 'relativeHipMoment', unit: '1', about: 'Measured, against a 64 cm seat; null outside 43–64 cm.' },
  ],
  citations: [...segmentCitations, ...chairHeightCitations],
  calculate: ({ sex, massKg, statureM, seatHeightM }) => {
    const statics = sitToStand(sex, massKg, statureM, seatHeightM);
    if (!statics) {
      return refuse('seatHeightM', 'outside-validity', 'This seat is too high to sit on at this stature.');
    }
    return answer(
      {
        ...statics,
        relativeKneeMoment: relativeKneeMoment(seatHeightM),
        relativeHipMoment: relativeHipMoment(seatHeightM),
      },
      [
        {
          code: 'rank-by-measured',
          text: 'The static sum rises too little as the seat falls; rank seats by the measured ratios.',
        },
      ],
    );
  },
  example: { sex: 'female', massKg: 65, statureM: 1.62, seatHeightM: 0.5 },
});

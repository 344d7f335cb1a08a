/**
 * Share of body weight on the hands in a push-up against a wall, from the distance of the feet.
 *
 * Rigid straight body about the ball of the foot, level force of the wall at shoulder height. Not
 * validated, and a small shift of the feet changes it a lot: record the distance. With bent elbows
 * the shoulders are taken 12 cm from the wall, an assumption, and the share is larger.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import { bodyCentreShare } from '../body/body-centre.ts';
import {
  armShare,
  ballOfFootShare,
  ballToShoulderShare,
  footCentreAheadShare,
  palmThicknessM,
} from '../body/body-lengths.ts';
import { sexField, statureField } from '../body/fields.ts';
import { degrees } from '../body/gravity.ts';
import { leverConstant } from '../body/lever-constant.ts';
import { type Sex, segmentCitations, segments } from '../body/segments.ts';

const bentShoulderToWallM = 0.12;

export interface WallPushUp {
  readonly sex: Sex;
  readonly statureM: number;
  /** Ball of the foot to the wall. */
  readonly footDistanceM: number;
  readonly elbows: 'straight' | 'bent';
}

export interface WallPushUpShare {
  /** Body angle from the floor. */
  readonly angleRadians: number;
  readonly share: number;
}

/** Angle at which the shoulder stands `reach` from the wall; null where the body cannot span the distance. */
const bodyAngle = (sex: Sex, reachShare: number, distanceShare: number): number | null => {
  const length = ballToShoulderShare(sex);
  const span = Math.hypot(length, ballOfFootShare);
  const cosine = (distanceShare - reachShare) / span;
  if (Math.abs(cosine) >= 1) return null;
  return Math.acos(cosine) - Math.atan(ballOfFootShare / length);
};

/** null where the feet are too near for any weight to come on the hands, or too far to stand. */
export const wallPushUpShare = (push: WallPushUp): WallPushUpShare | null => {
  const { sex, statureM, footDistanceM, elbows } = push;
  const arm = armShare(sex) + palmThicknessM / statureM;
  const reach = elbows === 'straight' ? arm : Math.min(arm, bentShoulderToWallM / statureM);
  const angle = bodyAngle(sex, reach, footDistanceM / statureM);
  if (angle === null || angle <= 0) return null;
  const arms = 2 * leverConstant('straight-arm', sex) * (reach / arm);
  const across = ballOfFootShare - 2 * segments[sex].foot.massShare * footCentreAheadShare;
  const turning = bodyCentreShare(sex) * Math.cos(angle) - across * Math.sin(angle) + arms;
  const lever = ballToShoulderShare(sex) * Math.sin(angle) + ballOfFootShare * Math.cos(angle);
  const share = turning / lever;
  return share > 0 && lever > 0 ? { angleRadians: angle, share } : null;
};

/** Ball of the foot to the wall when the person stands at arm's length and steps back. */
export const footDistanceFromArmLength = (sex: Sex, statureM: number, backM: number): number =>
  armShare(sex) * statureM + palmThicknessM + backM;

export const wallPushUpRow = calculation({
  id: 'wall-push-up-share',
  title: 'Share of body weight in a push-up against a wall',
  area: 'variation',
  input: [
    sexField,
    statureField,
    {
      name: 'footDistanceM',
      kind: 'number',
      unit: 'm',
      min: 0,
      max: 2,
      about: 'Ball of the foot to the wall.',
    },
    { name: 'elbows', kind: 'enum', values: ['straight', 'bent'] },
  ],
  result: [
    { name: 'share', unit: '1', about: 'Level force on both hands, of body weight.' },
    { name: 'bodyAngleDeg', unit: 'deg', about: 'From the floor.' },
  ],
  citations: segmentCitations,
  calculate: (input) => {
    const push = wallPushUpShare(input);
    if (!push) {
      return refuse(
        'footDistanceM',
        'outside-validity',
        'At this distance the model leaves no weight on the hands, or the body cannot span it.',
      );
    }
    return answer({ share: push.share, bodyAngleDeg: degrees(push.angleRadians) }, [
      {
        code: 'no-measurement',
        text: 'No measurement found to compare the model with; a small shift of the feet changes the share a lot, so record the distance.',
      },
    ]);
  },
  example: { sex: 'male', statureM: 1.75, footDistanceM: 0.8, elbows: 'straight' },
});

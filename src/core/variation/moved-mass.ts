/**
 * Share of body mass that travels in a squat, a one-leg squat and a pull-up: the body less the
 * segments that stay where they are. It says how much is lifted, not how hard a joint works.
 */
import { type Sex, segments } from './segments.ts';

export const movements = ['squat-two-legs', 'squat-one-leg', 'pull-up'] as const;
export type Movement = (typeof movements)[number];

export const movedMassShare = (movement: Movement, sex: Sex): number => {
  const { shank, foot, forearm, hand } = segments[sex];
  if (movement === 'pull-up') return 1 - 2 * (forearm.massShare + hand.massShare);
  const standing = shank.massShare + foot.massShare;
  return movement === 'squat-two-legs' ? 1 - 2 * standing : 1 - standing;
};

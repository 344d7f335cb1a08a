/**
 * Lengths the statics models share, as shares of stature.
 *
 * Foot and ankle follow Drillis and Contini; the place of the ball of the foot and the half-height
 * of the foot's own centre are assumptions of these models, stated wherever a result is shown.
 */
import { lengthShare, type Sex } from './segments.ts';

/** Ankle centre above the floor. */
export const ankleHeightShare = 0.039;
/** Foot length. */
export const footLengthShare = 0.152;
/** Ball of the foot in front of the ankle: 0.45 of foot length. */
export const ballOfFootShare = 0.0684;
/** Centre of mass of the foot below the ankle along the shank: half the ankle height. */
export const footCentreBelowAnkleShare = ankleHeightShare / 2;
/** Centre of mass of the foot in front of the ankle: a quarter of the way to the ball. */
export const footCentreAheadShare = ballOfFootShare / 4;
/** Palm heel and wrist thickness between the wrist centre and the surface pushed, m. */
export const palmThicknessM = 0.03;
/** Centre of an ankle cuff above the ankle centre, m. */
export const cuffAboveAnkleM = 0.05;

/** Shoulder to wrist with a straight elbow. */
export const armShare = (sex: Sex): number => lengthShare('upperArm', sex) + lengthShare('forearm', sex);

/** Hip to ankle. */
export const legShare = (sex: Sex): number => lengthShare('thigh', sex) + lengthShare('shank', sex);

/** Ball of the foot to shoulder, along the body held straight. */
export const ballToShoulderShare = (sex: Sex): number =>
  ankleHeightShare + legShare(sex) + lengthShare('trunk', sex);

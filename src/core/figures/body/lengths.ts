/**
 * Lengths of the drawn body: shares of stature after Drillis and Contini (1966) as printed by Winter,
 * Biomechanics and Motor Control of Human Movement, figure 4.1; those of the leg are the core's, the others from memory. Where a drawing
 * needs a joint's centre and the figure gives a breadth, half of it less the flesh is ours.
 */
import { ankleHeightShare, footLengthShare } from '../../exercises/body/body-lengths.ts';
import { winterLegSegments } from '../../exercises/body/winter-segments.ts';

const stature = 150;
const share = (of: number) => of * stature;

export const lengths = {
  upperArm: share(0.186),
  forearm: share(0.146),
  /** To the fingertips. */
  hand: share(0.108),
  /** From the wrist to the middle of a closed hand. */
  palm: share(0.045),
  thigh: share(winterLegSegments.thigh.lengthShare),
  shank: share(winterLegSegments.shank.lengthShare),
  ankleHeight: share(ankleHeightShare),
  foot: share(footLengthShare),
  /** Hip to shoulder. */
  trunk: share(0.288),
  /** Shoulders to the middle of the head. */
  neck: share(0.117),
  head: share(0.13),
  halfShoulders: share(0.1),
  halfHips: share(0.06),
} as const;

/** How thick each part is drawn. */
export const widths = {
  thigh: 13,
  shank: 11,
  foot: 8,
  'upper-arm': 10,
  forearm: 9,
  hand: 8,
  neck: 9,
  trunk: 18,
} as const;
export type Segment = keyof typeof widths;

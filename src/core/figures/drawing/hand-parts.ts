/** A hand's size and how far a finger goes from its knuckle. */
import { lengths } from '../body/lengths.ts';
import type { HandPose } from '../exercises/hand-figure.ts';
import { type Stroke, type Tone, tubes } from './strokes.ts';
import { pathThrough, type Spot } from './view.ts';

/** Three times the hand of a whole body. */
const whole = 3 * lengths.hand;
/** Shares of the hand's length: common practice of drawing, no source. */
export const size = {
  palm: whole * 0.5,
  phalanges: [whole * 0.24, whole * 0.16, whole * 0.11],
  palmWide: 17,
  fingerWide: 10.5,
  forearm: 62,
  forearmWide: 22,
} as const;

/** So far from a spot; directions count against the clock from the right. */
export const go = ([x, y]: Spot, degrees: number, far: number): Spot => [
  x + Math.cos((degrees * Math.PI) / 180) * far,
  y - Math.sin((degrees * Math.PI) / 180) * far,
];

/** A finger from its knuckle. */
export const fingerFrom = (
  knuckle: Spot,
  along: number,
  [first, second, third]: HandPose['fingers'],
  towards: 1 | -1,
): readonly Spot[] => {
  const spots = [knuckle];
  [first, first + second, first + second + third].forEach((bend, at) => {
    spots.push(go(spots[at]!, along + towards * bend, size.phalanges[at]!));
  });
  return spots;
};

export const bar = (
  spots: readonly Spot[],
  width: number,
  inner: Tone,
  ink: Tone = 'ink',
): readonly Stroke[] => tubes([{ d: pathThrough(spots), width, inner }], ink);

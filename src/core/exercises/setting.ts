/**
 * How an exercise is set up, as far as statics needs to know: heights, angles, supports. Distances
 * are in metres, angles in degrees, added weights in kilograms.
 */
export const levers = ['straight-leg', 'bent-leg', 'shank', 'forearm', 'straight-arm', 'bent-arm'] as const;
export type Lever = (typeof levers)[number];

export type Setting =
  | {
      readonly kind: 'push-up';
      readonly support: 'feet' | 'knees';
      readonly handHeightM: number;
      readonly footHeightM: number;
    }
  | {
      readonly kind: 'wall-push-up';
      /** Feet behind arm's length, counted in the person's own foot lengths. */
      readonly footLengthsBack: number;
    }
  | { readonly kind: 'sit-to-stand'; readonly seatHeightM: number }
  | {
      readonly kind: 'moved-mass';
      readonly movement: 'squat-two-legs' | 'squat-one-leg' | 'pull-up';
      readonly addedKg: number;
    }
  | { readonly kind: 'bridge'; readonly legs: 'two' | 'one-bent' | 'one-straight'; readonly addedKg: number }
  | { readonly kind: 'heel-raise'; readonly legs: 'two' | 'one'; readonly addedKg: number }
  | {
      readonly kind: 'limb-lift';
      readonly lever: Lever;
      /** Angle of the limb from the horizontal where the moment is largest in this exercise. */
      readonly angleDeg: number;
      readonly addedKg: number;
    }
  | { readonly kind: 'lean-back-row'; readonly fromVerticalDeg: number };

/** What a drawing of a hand is made of, three times as large as the hand of a whole body. */

export interface HandPose {
  /** Flexion of the wrist; extension below 0. */
  readonly wrist: number;
  /** Flexion of the knuckles and the two joints beyond, alike for all fingers. */
  readonly fingers: readonly [knuckle: number, middle: number, end: number];
  /** How far each finger stands from its neighbour. */
  readonly spread: number;
  /** How far the thumb stands off by itself; as the fingers spread where it is left out. */
  readonly thumb?: number;
  /** What is left between the tip of the thumb and what it presses on; left out = it does not pinch. */
  readonly gap?: number;
}

/** What is seen of it, and said. */
type HandMove =
  | 'wrist-bends'
  | 'wrist-bends-back'
  | 'wrist-lifts-thumb-side'
  | 'palm-turns'
  | 'fingers-close'
  | 'fingertips-hook'
  | 'fingers-spread'
  | 'fingers-straighten'
  | 'hands-twist'
  | 'thumb-out'
  | 'tips-pinch'
  | 'thumb-on-side'
  | 'hold';

type HandHolds =
  | 'hand-weight'
  | 'ball'
  | 'towel'
  | 'rolled-towel'
  | 'ring'
  | 'putty'
  | 'table'
  | 'other-hand';

export interface HandFigure {
  readonly palm: 'up' | 'down';
  readonly start: HandPose;
  readonly end: HandPose;
  readonly pictures: 1 | 2;
  readonly does: HandMove;
  readonly holds: HandHolds | 'nothing';
  /** Where nothing moves: the part that does the work. */
  readonly presses?: 'thumb' | 'index' | 'tips' | 'grip' | 'palm' | 'back';
}

/** What a drawing of a hand is made of, three times as large as the hand of a whole body. */

export interface HandPose {
  /** Flexion of the wrist; extension below 0. */
  readonly wrist: number;
  /** Flexion of the knuckles and the two joints beyond, alike for all fingers. */
  readonly fingers: readonly [knuckle: number, middle: number, end: number];
  /** How far each finger stands from its neighbour. */
  readonly spread: number;
}

type HandHolds = 'weight' | 'ball' | 'towel' | 'ring';

export interface HandFigure {
  readonly palm: 'up' | 'down';
  readonly start: HandPose;
  readonly end: HandPose;
  readonly pictures: 1 | 2;
  readonly holds: HandHolds;
}

/** What a drawing is made of. */
import type { Segment } from '../body/lengths.ts';
import type { Place, Point, Pose } from '../body/pose.ts';
import type { Vec } from '../body/turn.ts';

/** Degrees the viewer goes round the body, from its right side to its front, and up. */
export interface View {
  readonly name: 'side' | 'front' | 'back';
  readonly round: number;
  readonly up: number;
}
export const fromTheSide: View = { name: 'side', round: 0, up: 0 };
export const fromTheFront: View = { name: 'front', round: 90, up: 0 };
export const fromBehind: View = { name: 'back', round: -90, up: 0 };

/** Something that stands still: lines in space, or a shape where `isSolid`. */
export interface Prop {
  readonly lines: readonly (readonly Vec[])[];
  readonly isSolid?: boolean;
  /** Before the body rather than behind it. */
  readonly isInFront?: boolean;
}

/** The end of a band or cable: a point of the body or a place. */
export type BandEnd = Point | Place;

export type Load =
  | { readonly kind: 'ankle-weight' }
  | { readonly kind: 'hand-weight'; readonly both?: boolean }
  | { readonly kind: 'backpack' }
  | { readonly kind: 'hip-weight' }
  | { readonly kind: 'thigh-weight' }
  | { readonly kind: 'stick' }
  | { readonly kind: 'band'; readonly through: readonly BandEnd[] }
  /** Of a machine: a cable, a roller that a limb moves, the plate under a foot. */
  | { readonly kind: 'cable'; readonly through: readonly BandEnd[] }
  | { readonly kind: 'pad'; readonly at: Point; readonly shift: readonly [forward: number, up: number] }
  | { readonly kind: 'plate' };

/** The way a point goes from start to end, drawn beyond it as seen from another point. */
export interface Motion {
  readonly of: Point;
  readonly awayFrom?: Point;
  readonly beyond?: number;
  readonly shift?: readonly [right: number, up: number];
  /** Which part of the way. */
  readonly shares?: readonly [from: number, to: number];
}
/** Force without movement: an arrow beside a point, from and to so far off it. */
export interface Press {
  readonly at: Point;
  readonly from: readonly [right: number, up: number];
  readonly to: readonly [right: number, up: number];
}

export type StartPosition =
  | 'sitting'
  | 'standing'
  | 'standing-at-support'
  | 'standing-at-wall'
  | 'leaning-on-hands'
  | 'leaning-back'
  | 'hanging'
  | 'on-back'
  | 'on-front'
  | 'on-side'
  | 'on-all-fours'
  | 'on-forearms';

export interface Figure {
  readonly view: View;
  readonly position: StartPosition;
  readonly start: Pose;
  /** Left out where nothing moves. */
  readonly end?: Pose;
  /** What is done then; pressing where left out. */
  readonly still?: 'held-up' | 'blades-together';
  /** One picture with the start in grey where one limb moves; two where the whole body does. */
  readonly pictures: 1 | 2;
  readonly works: readonly Segment[];
  /** Both sides work alike. */
  readonly both?: boolean;
  readonly motions?: readonly Motion[];
  readonly presses?: readonly Press[];
  readonly props: readonly Prop[];
  readonly loads?: readonly Load[];
  /** Only what is around this point is shown, that far to each side. */
  readonly closeUp?: {
    readonly around: Point;
    readonly reach: number;
    readonly shift?: readonly [number, number];
  };
}

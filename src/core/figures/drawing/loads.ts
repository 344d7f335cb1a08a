/** What is strapped on, held or pulled. */
import { lengths } from '../body/lengths.ts';
import type { Point } from '../body/pose.ts';
import type { Skeleton } from '../body/skeleton.ts';
import { type Frame, from, minus, plus, times, unit, type Vec } from '../body/turn.ts';
import type { BandEnd, Load } from '../exercises/figure.ts';
import type { LimbName } from './person.ts';
import { ellipse, filled, type Stroke } from './strokes.ts';
import { type Projection, pathThrough } from './view.ts';

/** A block across a limb, from one share of the part to another. */
const blockAcross = (
  start: Vec,
  end: Vec,
  fromShare: number,
  toShare: number,
  width: number,
  eye: Projection,
) => {
  const at = (share: number) => eye.spot(plus(start, times(minus(end, start), share)));
  return { d: pathThrough([at(fromShare), at(toShare)]), width, isSquare: true };
};

/** Seen end on a hand weight is a disc; else a bar with a plate at each end. */
const handWeight = (palm: Vec, hand: Frame, eye: Projection): readonly Stroke[] => {
  const end = (aside: number) => eye.spot(from(palm, hand, [0, 0, aside]));
  const [right, left] = [end(9), end(-9)];
  if (Math.hypot(right[0] - left[0], right[1] - left[1]) < 9) {
    const middle = eye.spot(palm);
    return [filled(ellipse(middle, 7), 'ink'), filled(ellipse(middle, 2.4), 'paper')];
  }
  const plate = (share: number): Stroke => ({
    ...blockAcross(from(palm, hand, [0, 0, 9 * share]), from(palm, hand, [0, 0, 13 * share]), 0, 1, 13, eye),
    tone: 'ink',
  });
  return [{ d: pathThrough([left, right]), tone: 'ink', width: 3.5 }, plate(1), plate(-1)];
};

const backpack = ({ points, frames }: Skeleton, eye: Projection): readonly Stroke[] => {
  const at = (back: number, up: number) => eye.spot(from(points.chest, frames.chest, [-back, up, 0]));
  const d = pathThrough([at(10, -4), at(20, -9), at(21, -30), at(10, -32)], true);
  return [{ d, tone: 'ink', width: 5, isFilled: true }];
};

/** A cuff: hatched, high on the limb. */
export const cuffOf = ({ points }: Skeleton, limb: 'arm' | 'leg', eye: Projection): readonly Stroke[] => {
  const [start, end, width] =
    limb === 'leg' ? [points.hip, points.knee, 16] : [points.shoulder, points.elbow, 13];
  const block = (fromShare: number, toShare: number) =>
    blockAcross(start, end, fromShare, toShare, width, eye);
  return [
    { ...block(0.24, 0.52), tone: 'ink' },
    ...[0.3, 0.37, 0.44].map((at): Stroke => {
      const bar = block(at, at + 0.03);
      return { ...bar, width: width - 4, tone: 'paper' };
    }),
  ];
};

const bandThrough = (
  through: readonly BandEnd[],
  { points }: Skeleton,
  eye: Projection,
): readonly Stroke[] => {
  const spots = through.map((end) =>
    eye.spot(typeof end === 'string' ? points[end] : [end[0], end[1], end[2] ?? 0]),
  );
  const d = pathThrough(spots);
  return [
    { d, tone: 'band', width: 5 },
    { d, tone: 'paper', width: 1.6 },
  ];
};

const cableThrough = (
  through: readonly BandEnd[],
  { points }: Skeleton,
  eye: Projection,
): readonly Stroke[] => {
  const spots = through.map((end) =>
    eye.spot(typeof end === 'string' ? points[end] : [end[0], end[1], end[2] ?? 0]),
  );
  return [{ d: pathThrough(spots), tone: 'ink', width: 2 }];
};

/** A roller seen end on. */
const padAt = (
  { at, shift }: Extract<Load, { kind: 'pad' }>,
  { points }: Skeleton,
  eye: Projection,
): readonly Stroke[] => {
  const middle = eye.spot(plus(points[at], [shift[0], shift[1], 0]));
  return [filled(ellipse(middle, 6.5), 'ink'), filled(ellipse(middle, 2.4), 'paper')];
};

/** Under the sole of a foot that pushes. */
const plateUnder = (ankle: Vec, foot: Frame, eye: Projection): readonly Stroke[] => {
  const at = (forward: number) => eye.spot(from(ankle, foot, [forward, -lengths.ankleHeight - 3, 0]));
  return [{ d: pathThrough([at(-12), at(30)]), tone: 'ink', width: 5 }];
};

/** Held or strapped on at a limb, drawn over it. */
export const loadsOnLimb = (
  loads: readonly Load[],
  limb: LimbName,
  { points, frames }: Skeleton,
  eye: Projection,
): readonly Stroke[] =>
  loads.flatMap((load): readonly Stroke[] => {
    if (load.kind === 'ankle-weight' && limb === 'leg')
      return [{ ...blockAcross(points.knee, points.ankle, 0.74, 0.97, 16, eye), tone: 'ink' }];
    if (load.kind === 'plate' && limb === 'leg') return plateUnder(points.ankle, frames.foot, eye);
    if (load.kind === 'hand-weight' && limb === 'arm') return handWeight(points.palm, frames.hand, eye);
    if (load.kind === 'hand-weight' && load.both && limb === 'far-arm')
      return handWeight(points['far-palm'], frames['far-hand'], eye);
    if (load.kind === 'thigh-weight' && limb === 'leg') {
      const thigh = unit(minus(points.knee, points.hip));
      const [back, front] = [plus(points.knee, times(thigh, -17)), plus(points.knee, times(thigh, -3))];
      const raised = (point: Vec): Vec => plus(point, [0, 11, 0]);
      return [
        {
          d: pathThrough([eye.spot(raised(back)), eye.spot(raised(front))]),
          tone: 'ink',
          width: 9,
          isSquare: true,
        },
      ];
    }
    return [];
  });

const hipWeight = ({ points, frames }: Skeleton, eye: Projection): readonly Stroke[] => {
  const at = eye.spot(from(points.pelvis, frames.pelvis, [14, 0, 0]));
  return [filled(ellipse(at, 7.5), 'ink'), filled(ellipse(at, 2.4), 'paper')];
};

const stick = ({ points, frames }: Skeleton, eye: Projection): readonly Stroke[] => {
  const at = (point: Point & ('pelvis' | 'head'), up: number) =>
    eye.spot(from(points[point], frames.chest, [-11, up, 0]));
  return [{ d: pathThrough([at('pelvis', -6), at('head', 14)]), tone: 'ink', width: 3.2 }];
};

/** Loads on the trunk and bands: first those behind the body, then those before it. */
export const loadsBehind = (loads: readonly Load[], skeleton: Skeleton, eye: Projection): readonly Stroke[] =>
  loads.flatMap((load) =>
    load.kind === 'backpack' ? backpack(skeleton, eye) : load.kind === 'stick' ? stick(skeleton, eye) : [],
  );

export const loadsBefore = (loads: readonly Load[], skeleton: Skeleton, eye: Projection): readonly Stroke[] =>
  loads.flatMap((load) => {
    if (load.kind === 'band') return bandThrough(load.through, skeleton, eye);
    if (load.kind === 'cable') return cableThrough(load.through, skeleton, eye);
    if (load.kind === 'pad') return padAt(load, skeleton, eye);
    return load.kind === 'hip-weight' ? hipWeight(skeleton, eye) : [];
  });

/** Points and frames in space: x forward, y up, z to the body's right; degrees. */
export type Vec = readonly [number, number, number];
/** Forward, up and right of a part of the body, each of length 1. */
export type Frame = readonly [forward: Vec, up: Vec, right: Vec];

export const world: Frame = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

const radians = (degrees: number) => (degrees * Math.PI) / 180;
export const degrees = (radiansGiven: number): number => (radiansGiven * 180) / Math.PI;

export const plus = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const times = (a: Vec, by: number): Vec => [a[0] * by, a[1] * by, a[2] * by];
export const minus = (a: Vec, b: Vec): Vec => plus(a, times(b, -1));
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const lengthOf = (a: Vec): number => Math.hypot(...a);
export const unit = (a: Vec): Vec => times(a, 1 / (lengthOf(a) || 1));
/** What of `a` stands square to `to`. */
export const square = (a: Vec, to: Vec): Vec => minus(a, times(to, dot(a, to)));

const mixed = (a: Vec, b: Vec, by: number): readonly [Vec, Vec] => {
  const [cos, sin] = [Math.cos(radians(by)), Math.sin(radians(by))];
  return [plus(times(a, cos), times(b, sin)), plus(times(b, cos), times(a, -sin))];
};

/** Bends: what points down goes forward. */
export const aboutRight = ([forward, up, right]: Frame, by: number): Frame => {
  const [x, y] = mixed(forward, up, by);
  return [x, y, right];
};
/** Tilts: what points up goes to the right. */
export const aboutForward = ([forward, up, right]: Frame, by: number): Frame => {
  const [y, z] = mixed(up, right, by);
  return [forward, y, z];
};
/** Turns: what points right goes forward. */
export const aboutUp = ([forward, up, right]: Frame, by: number): Frame => {
  const [z, x] = mixed(right, forward, by);
  return [x, up, z];
};

/** A place told in a frame: so far forward, up and right of a point. */
export const from = (point: Vec, frame: Frame, [x, y, z]: Vec): Vec =>
  plus(point, plus(times(frame[0], x), plus(times(frame[1], y), times(frame[2], z))));

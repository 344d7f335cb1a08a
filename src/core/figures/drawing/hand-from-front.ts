/** A fist from in front, turning about the forearm with a weight in it. */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { bar, go } from './hand-parts.ts';
import { arrowAlong, type Stroke } from './strokes.ts';
import { pathThrough, type Spot } from './view.ts';

/** Turned about the forearm, which points at the eye. */
const turned =
  (degrees: number) =>
  ([x, y]: Spot): Spot => {
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    return [x * cos - y * sin, x * sin + y * cos];
  };

const across = (half: number, y: number): readonly Spot[] => [
  [-half, y],
  [half, y],
];

const around = (fromDegrees: number, toDegrees: number): readonly Stroke[] =>
  arrowAlong(
    Array.from({ length: 9 }, (_, at) =>
      go([0, 0], 90 - (fromDegrees + (toDegrees - fromDegrees) * (0.1 + at * 0.1)), 56),
    ),
  );

export const turnStrokes = (figure: HandFigure, pose: HandPose, hasArrows: boolean): readonly Stroke[] => {
  const turn = turned(pose.wrist);
  const line = (spots: readonly Spot[]) => spots.map(turn);
  const handle: Stroke = {
    d: pathThrough(
      line([
        [0, -36],
        [0, 36],
      ]),
    ),
    tone: 'ink',
    width: 6,
  };
  return [
    handle,
    ...[-36, 36].flatMap((y) => bar(line(across(12, y)), 15, 'paper')),
    ...[-15, -5, 5, 15].flatMap((y) => bar(line(across(12, y)), 11.5, 'works')),
    ...bar(
      line([
        [-12, -18],
        [-2, -25],
        [10, -22],
      ]),
      10,
      'works',
    ),
    ...(hasArrows ? around(figure.start.wrist, figure.end.wrist) : []),
  ];
};

/**
 * A right hand from its outer side, the forearm from the left: palm up the thumb is nearest, palm down it is
 * hidden.
 */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { bar, fingerFrom, go, size } from './hand-parts.ts';
import { arrowAlong, ellipse, filled, type Stroke, tubes } from './strokes.ts';
import { pathThrough, type Spot } from './view.ts';

const wristSpot: Spot = [0, 0];
const towardsPalm = ({ palm }: HandFigure): 1 | -1 => (palm === 'up' ? 1 : -1);

export const partsOf = (figure: HandFigure, pose: HandPose) => {
  const towards = towardsPalm(figure);
  const along = towards * pose.wrist;
  const overPalm = (share: number, high: number) =>
    go(go(wristSpot, along, size.palm * share), along + towards * 90, high);
  const knuckle = go(wristSpot, along, size.palm);
  const thumbBase = overPalm(0.3, 4);
  const thumbJoint = go(thumbBase, along + towards * 52, 13);
  return {
    overPalm,
    knuckle,
    finger: fingerFrom(knuckle, along, pose.fingers, towards),
    thumb: [thumbBase, thumbJoint, go(thumbJoint, along + towards * 12, 12)],
  };
};

/** Softer the further the fingers close. */
const ballIn = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const flat = 1 - Math.max(0, pose.fingers[1] - figure.start.fingers[1]) / 90;
  const ball = ellipse(partsOf(figure, pose).overPalm(0.92, 16 * flat + 5), 18 / Math.sqrt(flat), 18 * flat);
  return [filled(ball, 'ink', 5), filled(ball, 'paper')];
};

const weightIn = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const at = partsOf(figure, pose).overPalm(0.86, 13);
  return [filled(ellipse(at, 21), 'ink'), filled(ellipse(at, 16.5), 'paper'), filled(ellipse(at, 14), 'ink')];
};

interface Shown {
  readonly isGhost?: boolean;
  readonly hasThumb?: boolean;
}

export const handOf = (
  figure: HandFigure,
  pose: HandPose,
  { isGhost = false, hasThumb = figure.palm === 'up' }: Shown = {},
): readonly Stroke[] => {
  const { knuckle, finger, thumb } = partsOf(figure, pose);
  const [ink, inner] = isGhost ? (['ghost', 'paper'] as const) : (['ink', 'works'] as const);
  return [
    ...tubes(
      [
        { d: pathThrough([wristSpot, knuckle]), width: size.palmWide, inner },
        { d: pathThrough(finger), width: size.fingerWide, inner },
      ],
      ink,
    ),
    ...(hasThumb ? bar(thumb, size.fingerWide - 1, inner, ink) : []),
  ];
};

export const forearm = (inner: 'works' | 'paper') =>
  bar([[-size.forearm, 0], wristSpot], size.forearmWide, inner);
const table: Stroke = { d: 'M-66 13.5L-4 13.5L-4 21L-66 21', tone: 'prop', width: 2.8 };

const arcAround = (fromDegrees: number, toDegrees: number): readonly Stroke[] =>
  arrowAlong(
    Array.from({ length: 9 }, (_, at) =>
      go(wristSpot, fromDegrees + (toDegrees - fromDegrees) * (0.08 + at * 0.1), size.palm + 42),
    ),
  );

export const wristStrokes = (figure: HandFigure): readonly Stroke[] => {
  const towards = towardsPalm(figure);
  return [
    table,
    ...handOf(figure, figure.start, { isGhost: true }),
    ...forearm('works'),
    ...weightIn(figure, figure.end),
    ...handOf(figure, figure.end),
    ...arcAround(towards * figure.start.wrist, towards * figure.end.wrist),
  ];
};

/** Rolled, seen from its end. */
const towelIn = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const at = partsOf(figure, pose).overPalm(0.92, 17);
  return [20, 12, 4].flatMap((wide) => [
    filled(ellipse(at, wide), 'ink', 2.6),
    filled(ellipse(at, wide), 'paper'),
  ]);
};

/** Round while the hand is open, and squeezed out flat beyond the fingers as it closes. */
const puttyIn = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const flat = 1 - Math.max(0, pose.fingers[1] - figure.start.fingers[1]) / 110;
  const { overPalm } = partsOf(figure, pose);
  const putty =
    figure.does === 'fingertips-hook'
      ? ellipse(overPalm(1.1, 17), 15, 9)
      : ellipse(overPalm(0.9, 13 * flat + 5), 23 / flat, 14 * flat);
  return [filled(putty, 'ink', 5), filled(putty, 'paper')];
};

/** Round the thumb and the fingers. */
const ringOn = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const { finger, thumb } = partsOf(figure, pose);
  const [a, b] = [thumb.at(-1)!, finger[2]!];
  const d = pathThrough([a, b]);
  return [
    { d, tone: 'band', width: 6 },
    { d, tone: 'paper', width: 1.8 },
  ];
};

const tipArrow = (figure: HandFigure): readonly Stroke[] => {
  const { start, end } = figure;
  const tips = Array.from({ length: 9 }, (_, at): Spot => {
    const share = 0.1 + at * 0.1;
    const fingers = start.fingers.map((bend, joint) => bend + (end.fingers[joint]! - bend) * share);
    const { finger } = partsOf(figure, { ...start, fingers: fingers as unknown as HandPose['fingers'] });
    const [[fromX, fromY], [x, y]] = [finger[2]!, finger[3]!];
    return [x + (x - fromX) * 2.2, y + (y - fromY) * 2.2];
  });
  return arrowAlong(tips);
};

const fromBothSides = (x: number): readonly Stroke[] =>
  [
    [-64, -48],
    [44, 28],
  ].flatMap(([from, to]) =>
    arrowAlong([
      [x, from!],
      [x, to!],
    ]),
  );

const heldIn = (figure: HandFigure, pose: HandPose): readonly Stroke[] =>
  figure.holds === 'ball'
    ? ballIn(figure, pose)
    : figure.holds === 'rolled-towel'
      ? towelIn(figure, pose)
      : figure.holds === 'putty'
        ? puttyIn(figure, pose)
        : [];

export const closingStrokes = (figure: HandFigure, pose: HandPose, hasArrows: boolean): readonly Stroke[] => {
  const arrows = () =>
    figure.does === 'fingers-close' || figure.does === 'hold'
      ? fromBothSides(partsOf(figure, pose).finger[1]![0] - 12)
      : tipArrow(figure);
  return [
    ...forearm('paper'),
    ...heldIn(figure, pose),
    ...handOf(figure, pose),
    ...(figure.holds === 'ring' ? ringOn(figure, pose) : []),
    ...(hasArrows ? arrows() : []),
  ];
};

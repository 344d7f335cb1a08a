/** Thumb and finger of a right hand from its outer side, pressing on each other or on putty between them. */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { forearm, handOf, partsOf } from './hand-from-side.ts';
import { bar, size } from './hand-parts.ts';
import { arrowAlong, ellipse, filled, type Stroke } from './strokes.ts';
import type { Spot } from './view.ts';

/** So far the middle lines are apart where two tips touch; on the side of a finger the thumb lies over it. */
const touching = { tip: 7, side: 2 } as const;

const towards = (from: Spot, to: Spot, far: number): Spot => {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [from[0] + ((to[0] - from[0]) / long) * far, from[1] + ((to[1] - from[1]) / long) * far];
};
const middle = (a: Spot, b: Spot): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

const pinchOf = (figure: HandFigure, pose: HandPose) => {
  const { finger, thumb } = partsOf(figure, pose);
  const base = thumb[0]!;
  const isOnSide = figure.does === 'thumb-on-side';
  const pressed = isOnSide ? middle(finger[1]!, finger[2]!) : finger[3]!;
  const [from, least]: readonly [Spot, number] = isOnSide
    ? [[pressed[0] - 12, pressed[1] - 40], touching.side]
    : [[base[0], pressed[1] - 6], touching.tip];
  const tip = towards(pressed, from, least + (pose.gap ?? 0));
  const half = middle(base, tip);
  return { pressed, tip, thumb: [base, [half[0] - 3, half[1] - 9], tip] as const };
};

const puttyBetween = (a: Spot, b: Spot, gap: number): readonly Stroke[] => {
  const d = ellipse(middle(a, b), gap / 2 + 4, 26 / Math.sqrt(gap + 4));
  return [filled(d, 'ink', 5), filled(d, 'paper')];
};

export const pinchStrokes = (figure: HandFigure, pose: HandPose, hasArrows: boolean): readonly Stroke[] => {
  const { pressed, tip, thumb } = pinchOf(figure, pose);
  const [x, y] = middle(tip, pressed);
  return [
    ...forearm('paper'),
    ...(figure.holds === 'putty' ? puttyBetween(tip, pressed, pose.gap ?? 0) : []),
    ...handOf(figure, pose, { hasThumb: false }),
    ...bar(thumb, size.fingerWide - 1, 'works'),
    ...(hasArrows
      ? [
          ...arrowAlong([
            [x - 34, y - 24],
            [x - 14, y - 15],
          ]),
          ...arrowAlong([
            [x + 32, y - 24],
            [x + 12, y - 15],
          ]),
        ]
      : []),
  ];
};

/** A flat hand from its outer side, pressed down on a table or up against it. */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { forearm, handOf } from './hand-from-side.ts';
import { arrowAlong, type Stroke } from './strokes.ts';

const table = (edge: number): Stroke => ({
  d: `M-66 ${edge}L78 ${edge}L78 ${edge + 7.5}L-66 ${edge + 7.5}`,
  tone: 'prop',
  width: 2.8,
});

export const pressStrokes = (figure: HandFigure, pose: HandPose): readonly Stroke[] => {
  const isUp = figure.presses === 'back';
  const [from, to] = isUp ? [42, 20] : [-42, -20];
  return [
    table(isUp ? -21 : 13.5),
    ...forearm('works'),
    ...handOf(figure, pose),
    ...arrowAlong([
      [18, from],
      [18, to],
    ]),
  ];
};

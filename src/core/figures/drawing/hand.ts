/** Hands as pictures. */
import type { HandFigure } from '../exercises/hand-figure.ts';
import { spreadStrokes } from './hand-from-back.ts';
import { squeezeStrokes, wristStrokes } from './hand-from-side.ts';
import { towelStrokes } from './hands-on-towel.ts';
import type { Picture } from './picture.ts';
import type { Stroke } from './strokes.ts';
import { boxAround, boxOfPath } from './view.ts';

const strokesOf = (figure: HandFigure): readonly (readonly Stroke[])[] => {
  const { holds, start, end } = figure;
  if (holds === 'weight') return [wristStrokes(figure)];
  if (holds === 'ball') return [squeezeStrokes(figure, start, true), squeezeStrokes(figure, end, false)];
  if (holds === 'ring') return [spreadStrokes(start.spread, true), spreadStrokes(end.spread, false)];
  return [towelStrokes(start.wrist), towelStrokes(end.wrist)];
};

export const picturesOfHand = (figure: HandFigure): readonly Picture[] =>
  strokesOf(figure).map((strokes) => ({
    strokes,
    box: boxAround(strokes.map(({ d, width }) => boxOfPath(d, width / 2))),
  }));

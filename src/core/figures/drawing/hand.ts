/** Hands as pictures. */
import type { HandFigure, HandPose } from '../exercises/hand-figure.ts';
import { backStrokes } from './hand-from-back.ts';
import { turnStrokes } from './hand-from-front.ts';
import { closingStrokes, wristStrokes } from './hand-from-side.ts';
import { pressStrokes } from './hand-on-table.ts';
import { pinchStrokes } from './hand-pinching.ts';
import { towelStrokes } from './hands-on-towel.ts';
import type { Picture } from './picture.ts';
import type { Stroke } from './strokes.ts';
import { boxAround, boxOfPath } from './view.ts';

type Drawn = (figure: HandFigure, pose: HandPose, hasArrows: boolean) => readonly Stroke[];

const ofHold: Readonly<Record<NonNullable<HandFigure['presses']>, Drawn>> = {
  thumb: backStrokes,
  index: backStrokes,
  tips: pinchStrokes,
  grip: closingStrokes,
  palm: pressStrokes,
  back: pressStrokes,
};

const ofMove: Readonly<Record<HandFigure['does'], Drawn>> = {
  'wrist-bends': wristStrokes,
  'wrist-bends-back': wristStrokes,
  'wrist-lifts-thumb-side': wristStrokes,
  'palm-turns': turnStrokes,
  'fingers-close': closingStrokes,
  'fingertips-hook': closingStrokes,
  'fingers-straighten': closingStrokes,
  'fingers-spread': backStrokes,
  'thumb-out': backStrokes,
  'tips-pinch': pinchStrokes,
  'thumb-on-side': pinchStrokes,
  'hands-twist': (_, pose) => towelStrokes(pose.wrist),
  hold: (figure, pose, hasArrows) => ofHold[figure.presses ?? 'grip'](figure, pose, hasArrows),
};

const strokesOf = (figure: HandFigure): readonly (readonly Stroke[])[] => {
  const drawn = ofMove[figure.does];
  const start = drawn(figure, figure.start, true);
  return figure.pictures === 1 ? [start] : [start, drawn(figure, figure.end, false)];
};

export const picturesOfHand = (figure: HandFigure): readonly Picture[] =>
  strokesOf(figure).map((strokes) => ({
    strokes,
    box: boxAround(strokes.map(({ d, width }) => boxOfPath(d, width / 2))),
  }));

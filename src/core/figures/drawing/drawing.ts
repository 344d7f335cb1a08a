/** The drawing of an exercise as prescribed: its pictures in their places, from which a screen or a paper makes its own. */
import type { Figure } from '../exercises/figure.ts';
import { isHand } from '../exercises/figures.ts';
import type { HandFigure } from '../exercises/hand-figure.ts';
import { picturesOfHand } from './hand.ts';
import { type LaidOut, laidOut } from './laid-out.ts';
import { type Picture, picturesOf } from './picture.ts';

export interface Drawing extends LaidOut {
  readonly pictures: readonly Picture[];
  /** The limb a cuff is drawn on. */
  readonly cuffOn: 'arm' | 'leg' | undefined;
}

/** The limb that works; a cuff goes nowhere else. */
const limbWithCuff = ({ works }: Figure): Drawing['cuffOn'] =>
  works.includes('upper-arm') || works.includes('hand') ? 'arm' : works.includes('shank') ? 'leg' : undefined;

export const drawingOf = (figure: Figure | HandFigure, hasCuff: boolean): Drawing => {
  const cuffOn = hasCuff && !isHand(figure) ? limbWithCuff(figure) : undefined;
  const pictures = isHand(figure) ? picturesOfHand(figure) : picturesOf(figure, cuffOn);
  return { ...laidOut(pictures), pictures, cuffOn };
};

/** How an exercise goes, drawn from joint angles. The words under it say the same. */
import { memo } from 'react';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import { picturesOfHand } from './drawing/hand.ts';
import { type Picture, picturesOf } from './drawing/picture.ts';
import { boxAround, type Spot } from './drawing/view.ts';
import type { Figure } from './exercises/figure.ts';
import { figures, isHand } from './exercises/figures.ts';
import type { HandFigure } from './exercises/hand-figure.ts';
import { sayFigure } from './say-figure.ts';

const margin = 3;
const gap = 20;
const roomForNumber = 16;

/** Where each picture stands: beside each other, or under each other where they are wide and low. */
const laidOut = (pictures: readonly Picture[]) => {
  // One room for both, so that what stands still stays.
  const box = boxAround(pictures.map((picture) => picture.box));
  const [left, top] = [box.left - margin, box.top - margin];
  const [wide, high] = [box.right + margin - left, box.bottom + margin - top];
  const isNumbered = pictures.length > 1;
  const isStacked = isNumbered && wide > 1.5 * high;
  const room = isNumbered ? roomForNumber : 0;
  const places = pictures.map(
    (_, at): Spot => [isStacked ? room : at * (wide + gap), isStacked ? at * (high + gap / 2) : room],
  );
  const [lastX, lastY] = places.at(-1)!;
  const whole = [lastX + wide, lastY + high] as const;
  return { left, top, wide, high, isNumbered, isStacked, places, whole };
};

const Strokes = ({ strokes }: Pick<Picture, 'strokes'>) =>
  strokes.map(({ d, tone, width, isFilled, isSquare }, at) => (
    <path
      // biome-ignore lint/suspicious/noArrayIndexKey: strokes have no name and never change places.
      key={at}
      className={`figure-${tone}${isFilled ? ' figure-filled' : ''}${isSquare ? ' figure-square' : ''}`}
      d={d}
      strokeWidth={width}
    />
  ));

/** The limb that works; a cuff goes nowhere else. */
const limbWithCuff = ({ works }: Figure): 'arm' | 'leg' | undefined =>
  works.includes('upper-arm') || works.includes('hand') ? 'arm' : works.includes('shank') ? 'leg' : undefined;

interface DrawingProps {
  readonly figure: Figure | HandFigure;
  readonly side: WorkedSide | undefined;
  readonly hasCuff: boolean;
}

const numeral = (isStacked: boolean) => (isStacked ? { x: 2 - roomForNumber, y: 14 } : { x: 2, y: -4 });

/** Kept until another drawing is asked for: the page around it changes with every key. */
const Drawing = memo(({ figure, side, hasCuff }: DrawingProps) => {
  const cuffOn = hasCuff && !isHand(figure) ? limbWithCuff(figure) : undefined;
  const pictures = isHand(figure) ? picturesOfHand(figure) : picturesOf(figure, cuffOn);
  const { left, top, wide, high, isNumbered, isStacked, places, whole } = laidOut(pictures);
  const said = sayFigure(figure, side, cuffOn !== undefined);
  return (
    <svg
      className="exercise-figure"
      viewBox={`0 0 ${whole.map(Math.ceil).join(' ')}`}
      role="img"
      aria-label={said}
    >
      {pictures.map(({ strokes }, at) => (
        <g
          key={places[at]!.join(' ')}
          transform={`translate(${places[at]!.map((one) => one.toFixed(1)).join(' ')})`}
        >
          <svg width={wide} height={high} viewBox={`${left} ${top} ${wide} ${high}`} aria-hidden>
            <g transform={side === 'left' ? `translate(${2 * left + wide} 0) scale(-1 1)` : undefined}>
              <Strokes strokes={strokes} />
            </g>
          </svg>
          {isNumbered ? (
            <text className="figure-number" {...numeral(isStacked)}>
              {at + 1}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  );
});

export interface ExerciseFigureProps {
  readonly exerciseId: string;
  /** Left is drawn as the mirror of right; left out, the right side is drawn. */
  readonly side?: WorkedSide | undefined;
  readonly hasCuff?: boolean | undefined;
}

export const ExerciseFigure = ({ exerciseId, side, hasCuff = false }: ExerciseFigureProps) => {
  const figure = figures[exerciseId];
  return figure ? <Drawing figure={figure} side={side} hasCuff={hasCuff} /> : null;
};

/** How an exercise goes, drawn from joint angles. The words under it say the same. */
import './figure-words.ts';
import { memo } from 'react';
import type { WorkedSide } from '#core/exercises/exercise.ts';
import { drawingOf } from '#core/figures/drawing/drawing.ts';
import type { Picture } from '#core/figures/drawing/picture.ts';
import type { Figure } from '#core/figures/exercises/figure.ts';
import { figures } from '#core/figures/exercises/figures.ts';
import type { HandFigure } from '#core/figures/exercises/hand-figure.ts';
import { sayFigure } from '#messages/figures.ts';
import { t } from '#ui/language/words.ts';

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

interface DrawingProps {
  readonly figure: Figure | HandFigure;
  readonly side: WorkedSide | undefined;
  readonly hasCuff: boolean;
}

/** Kept until another drawing is asked for: the page around it changes with every key. */
const Drawing = memo(({ figure, side, hasCuff }: DrawingProps) => {
  const drawing = drawingOf(figure, hasCuff);
  const { pictures, left, top, wide, high, isNumbered, places, whole } = drawing;
  const [numeralX, numeralY] = drawing.numeral;
  const said = sayFigure(figure, side, t, drawing.cuffOn !== undefined);
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
            <text className="figure-number" x={numeralX} y={numeralY}>
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
